import { defineRule } from "../../engine/rule.ts";
import { acddTier } from "./attribute-rule.ts";

/** Words for other data than samples. */
const OTHERS = ["grid", "image", "radial", "swath"];

/** For each featureType: the word to use, others that are accepted, others that are accepted with advice. */
const WORDS: Readonly<Record<string, { use: string; also: readonly string[]; with?: readonly string[] }>> = {
  point: { use: "Point", also: [] },
  profile: { use: "Profile", also: [], with: ["station"] },
  timeseries: { use: "Station", also: ["timeseries"] },
  timeseriesprofile: { use: "Station_Profile", also: ["stationprofile", "timeseriesprofile"] },
  trajectory: { use: "Trajectory", also: [] },
  trajectoryprofile: { use: "Section", also: ["trajectoryprofile"] },
};

const plain = (word: string): string => word.trim().toLowerCase().replaceAll("_", "");
const KNOWN = [...OTHERS, ...Object.values(WORDS).flatMap(({ use, also }) => [plain(use), ...also])];
const where = { attribute: "cdm_data_type" };

export const samplingKind = defineRule({
  id: "acdd/sampling-kind",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "reading",
  citation: acddTier("suggested"),
  covers: ["ACDD cdm_data_type"],
  title: "cdm_data_type is a known word and agrees with featureType",
  why: "Catalogues show the data by this word; a series shown as a cast is not found by those who look for it.",
  remedy: "Set cdm_data_type to {expected}.",
  messages: {
    unknown: 'cdm_data_type is "{found}", which is no known word',
    other: 'cdm_data_type is "{found}", but featureType is "{type}"',
    form: 'cdm_data_type is "{found}", usually written {expected}',
  },
  passing: [
    ':featureType = "profile" ; :cdm_data_type = "Profile" ;',
    ':featureType = "timeSeriesProfile" ; :cdm_data_type = "Station_Profile" ;',
    ':featureType = "timeSeries" ; :cdm_data_type = "TimeSeries" ;',
  ],
  failing: [
    { cdl: ':cdm_data_type = "Cast" ;', where, message: "unknown" },
    { cdl: ':featureType = "profile" ; :cdm_data_type = "Trajectory" ;', where, message: "other" },
    {
      cdl: ':featureType = "profile" ; :cdm_data_type = "Station" ;',
      where,
      message: "form",
      level: "advice",
    },
    {
      cdl: ':featureType = "profile" ; :cdm_data_type = "profile" ;',
      where,
      message: "form",
      level: "advice",
    },
  ],
  check(dataset, report) {
    const found = dataset.text("cdm_data_type");
    if (found === undefined || found.trim() === "") return;
    const word = plain(found);
    const { featureType, claimed } = dataset.layout;
    const words = featureType === null ? undefined : WORDS[featureType];
    const fill = { type: claimed ?? "" };
    if (!KNOWN.includes(word)) {
      if (dataset.holdsToAcdd) report(where, "unknown", { found, expected: words?.use ?? KNOWN });
      return;
    }
    if (words === undefined) return;
    const same = word === plain(words.use) || words.also.includes(word);
    if (!same && !words.with?.includes(word)) report(where, "other", { found, expected: words.use, fill });
    else if (!same || (word === plain(words.use) && found !== words.use && !words.also.includes(word)))
      report(where, "form", { found, expected: words.use, level: "advice" });
  },
});
