import type { Cast, Result } from "@wherry/core";
import type { UnderstoodFile } from "@wherry/formats";
import { type Task, type ToProcess, type ToUnderstand, tasks } from "./tasks.ts";

/** Does the work of casts, in threads if there are several jobs. */
export interface Workers {
  readonly jobs: number;
  understand(input: ToUnderstand): Promise<Result<UnderstoodFile>>;
  process(input: ToProcess): Promise<Cast>;
  close(): Promise<void>;
}

const alone: Workers = { jobs: 1, ...tasks, close: async () => {} };

/** Threads cost more to start than a few casts to do; one job has none. */
export async function startWorkers(jobs: number): Promise<Workers> {
  if (jobs <= 1) return alone;
  const { Piscina } = await import("piscina");
  const filename = new URL("./thread.js", import.meta.url).href;
  // a thread takes longer to start than a cast to do, so all are kept until the end
  const pool = new Piscina({ filename, minThreads: jobs, maxThreads: jobs });
  const run = (task: Task) => pool.run(task);
  return {
    jobs,
    understand: (input) => run({ task: "understand", input }),
    process: (input) => run({ task: "process", input }),
    close: () => pool.destroy(),
  };
}

/** Results in the order of the items, with at most `jobs` of them under way. */
export async function inOrder<T, R>(
  items: readonly T[],
  jobs: number,
  run: (item: T, index: number) => Promise<R>,
): Promise<R[]> {
  const results = new Array<R>(items.length);
  let next = 0;
  const lane = async () => {
    while (next < items.length) {
      const index = next++;
      results[index] = await run(items[index]!, index);
    }
  };
  await Promise.all(Array.from({ length: Math.max(1, jobs) }, lane));
  return results;
}
