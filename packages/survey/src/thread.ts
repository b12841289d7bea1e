import { type Task, tasks } from "./tasks.ts";

/** What a thread of the pool runs. */
export default ({ task, input }: Task): Promise<unknown> =>
  (tasks[task] as (input: unknown) => Promise<unknown>)(input);
