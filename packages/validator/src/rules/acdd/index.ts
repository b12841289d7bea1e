import type { Rule } from "../../engine/rule.ts";
import { attributeRules } from "./attribute-rule.ts";
import { choiceAttributes } from "./choice-attributes.ts";
import { contentType } from "./content-type.ts";
import { conventionsAcdd } from "./conventions-acdd.ts";
import { datesOrder } from "./dates-order.ts";
import { geospatialBounds } from "./geospatial-bounds.ts";
import { latitudeLimits } from "./latitude-limits.ts";
import { listLengths } from "./list-lengths.ts";
import { longitudeLimits } from "./longitude-limits.ts";
import { resolutions } from "./resolutions.ts";
import { samplingKind } from "./sampling-kind.ts";
import { timeCoverage } from "./time-coverage.ts";
import { variableLongName } from "./variable-long-name.ts";
import { variableStandardName } from "./variable-standard-name.ts";
import { variableUnits } from "./variable-units.ts";
import { verticalLimits } from "./vertical-limits.ts";

/** Rules of ACDD 1.3: presence and form of each attribute, then what they say against the data. */
export const acddRules: readonly Rule[] = [
  ...attributeRules,
  choiceAttributes,
  contentType,
  conventionsAcdd,
  datesOrder,
  geospatialBounds,
  latitudeLimits,
  listLengths,
  longitudeLimits,
  resolutions,
  samplingKind,
  timeCoverage,
  variableLongName,
  variableStandardName,
  variableUnits,
  verticalLimits,
];
