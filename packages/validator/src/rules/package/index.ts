import type { BagRule } from "../../engine/bag-rule.ts";
import { packageBaseDirectory } from "./base-directory.ts";
import { packageChecksums } from "./checksums.ts";
import { packageComplete } from "./complete.ts";
import { packageDeclaration } from "./declaration.ts";
import { packageFetch } from "./fetch.ts";
import { packageInfo } from "./info.ts";
import { packageManifestLines } from "./manifest-lines.ts";
import { packageManifests } from "./manifests.ts";
import { packagePaths } from "./paths.ts";
import { packagePayloadOxum } from "./payload-oxum.ts";
import { packageTagManifests } from "./tag-manifests.ts";

/** Rules of deposit packages (BagIt, RFC 8493). */
export const packageRules: readonly BagRule[] = [
  packageBaseDirectory,
  packageChecksums,
  packageComplete,
  packageDeclaration,
  packageFetch,
  packageInfo,
  packageManifestLines,
  packageManifests,
  packagePaths,
  packagePayloadOxum,
  packageTagManifests,
];
