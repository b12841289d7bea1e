import type { Instrument, Platform } from "@wherry/contracts";
import { sensorCalibrations } from "../../sheet/calibration-words.ts";
import type { DataSetFacts } from "../data-set-facts.ts";
import { code, identifier, online, text } from "./iso-parts.ts";
import { type Element, element } from "./xml.ts";

type Part = Element | null;

/** Instruments with their calibrations, and what they were lowered from. */
export function acquisition({ sheet }: DataSetFacts): Part {
  const instruments = (sheet.instruments ?? []).map((instrument, index) => instrumentPart(instrument, index));
  const platforms = (sheet.platforms ?? []).map((platform, index) =>
    platformPart(platform, index, instruments),
  );
  if (instruments.length + platforms.length === 0) return null;
  return element(
    "mac:MI_AcquisitionInformation",
    element("mac:scope", element("mcc:MD_Scope", code("mcc:level", "mcc:MD_ScopeCode", "dataset"))),
    platforms.length === 0 ? instruments.map((part) => element("mac:instrument", part)) : null,
    platforms.map((part) => element("mac:platform", part)),
  );
}

const idOf = (kind: string, id: string | undefined, index: number): string => id ?? `${kind}${index + 1}`;

function instrumentPart(instrument: Instrument, index: number): Part {
  const { id, name, model, serial_number, calibration_date, identifier: address } = instrument;
  const calibrations = sensorCalibrations(instrument);
  return element(
    "mac:MI_Instrument",
    address
      ? element(
          "mac:citation",
          element("cit:CI_Citation", text("cit:title", name), online("cit:onlineResource", address)),
        )
      : null,
    identifier("mac:identifier", {
      code: serial_number ?? idOf("instrument", id, index),
      space: serial_number === undefined ? null : "serial number",
    }),
    text("mac:type", name),
    text(
      "mac:description",
      [model, calibration_date && `calibrated ${calibration_date}`, ...calibrations]
        .filter(Boolean)
        .join("\n"),
    ),
  );
}

function platformPart(platform: Platform, index: number, instruments: readonly Part[]): Part {
  const { id, name, call_sign, code: own, vocabulary, comment } = platform;
  return element(
    "mac:MI_Platform",
    identifier("mac:identifier", {
      code: own ?? idOf("platform", id, index),
      space: own === undefined ? null : vocabulary,
    }),
    text(
      "mac:description",
      [name, call_sign && `call sign ${call_sign}`, comment].filter(Boolean).join("\n"),
    ),
    // the standard has no platform without an instrument; which cast used which stands in the products
    instruments.map((part) => element("mac:instrument", part)),
  );
}
