import { readFile } from "node:fs/promises";
import { extname } from "node:path";
import { fail, type Problem, type Result, succeed } from "@wherry/core";
import { type CheckedFile, checkFile } from "@wherry/validator";
import { openFileSource } from "./file-source.ts";
import { findFiles } from "./input-files.ts";
import { problemFromIo } from "./problem-from-io.ts";
import type { RunOptions } from "./understand-files.ts";
