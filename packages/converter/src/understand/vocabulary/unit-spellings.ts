import { remember } from "../remember.ts";
import type { UnitKind } from "./quantities.ts";

/** A unit as exports spell it. */
export interface UnitSpelling {
  readonly kind: UnitKind;
  /** UDUNITS spelling. */
  readonly units: string;
  /** What the spelling says beside the unit. */
  readonly says?:
    | "absolute"
    | "gauge"
    | "ITS-90"
    | "IPTS-68"
    | "PSS-78"
    | "per mille"
    | "25 degC"
    | "incomplete";
}

const unit = (kind: UnitKind, units: string, says?: UnitSpelling["says"]): UnitSpelling =>
  says ? { kind, units, says } : { kind, units };

/** Spellings after `foldUnit`. A name that could mean two units is not here. */
const SPELLINGS: readonly (readonly [UnitSpelling, string])[] = [
  [unit("pressure", "dbar"), "dbar db decibar decibars"],
  [unit("pressure", "dbar", "absolute"), "dbara dbarabs"],
  [unit("pressure", "dbar", "gauge"), "dbarg"],
  [unit("pressure", "bar"), "bar bars"],
  [unit("pressure", "bar", "absolute"), "bara barabs"],
  [unit("pressure", "bar", "gauge"), "barg"],
  [unit("pressure", "mbar"), "mbar millibar hpa"],
  [unit("pressure", "kPa"), "kpa"],
  [unit("pressure", "kPa", "absolute"), "kpaa kpaabs"],
  [unit("pressure", "kPa", "gauge"), "kpag"],
  [unit("pressure", "MPa"), "MPa"],
  [unit("pressure", "Pa"), "Pa"],
  [unit("pressure", "psi"), "psi"],
  [unit("pressure", "psi", "absolute"), "psia"],
  [unit("pressure", "psi", "gauge"), "psig"],
  [unit("length", "m"), "m meter meters metre metres metro metros metri mètre mètres"],
  [unit("length", "cm"), "cm"],
  [unit("length", "mm"), "mm"],
  [unit("length", "ft"), "ft feet foot"],
  [unit("length", "fathom"), "fathom fathoms fm fth"],
  [
    unit("temperature", "degree_C"),
    "degc °c c celsius degcelsius degreec degreesc degree_c degrees_c degree_celsius degreecelsius degreescelsius oc gradc grad°c",
  ],
  [
    unit("temperature", "degree_C", "ITS-90"),
    "its-90 its90 degc(its-90) degcits-90 °c(its-90) °cits-90 degc,its-90 °c,its-90",
  ],
  [
    unit("temperature", "degree_C", "IPTS-68"),
    "ipts-68 ipts68 its-68 degc(ipts-68) degcipts-68 °c(ipts-68) °cipts-68 degc,ipts-68 °c,ipts-68",
  ],
  [unit("temperature", "degree_F"), "degf °f f fahrenheit degreef degreesf degree_f degrees_f"],
  [unit("temperature", "K"), "K kelvin degk °k"],
  [
    unit("conductivity", "mS cm-1"),
    "ms/cm mscm-1 ms.cm-1 mmho/cm mmhos/cm millisiemens/cm millisiemens/centimetre millisiemens/centimeter mscm^-1",
  ],
  [unit("conductivity", "mS cm-1", "25 degC"), "ms/cm@25°c ms/cm@25c ms/cm@25degc ms/cm25°c ms/cm(25°c)"],
  [
    unit("conductivity", "uS cm-1"),
    "us/cm uscm-1 us.cm-1 umho/cm umhos/cm microsiemens/cm microsiemens/centimetre microsiemens/centimeter microsiemenspercm uscm^-1",
  ],
  [unit("conductivity", "uS cm-1", "25 degC"), "us/cm@25°c us/cm@25c us/cm@25degc us/cm25°c us/cm(25°c)"],
  [unit("conductivity", "mS m-1"), "ms/m msm-1"],
  [unit("conductivity", "S m-1"), "s/m sm-1 s.m-1 siemens/m siemens/meter siemens/metre mho/m sm^-1"],
  [unit("conductivity", "S cm-1"), "s/cm"],
  // common practice, no source: loggers write uS and mS for a conductivity per centimetre
  [unit("conductivity", "mS cm-1", "incomplete"), "mS"],
  [unit("conductivity", "uS cm-1", "incomplete"), "us"],
  [unit("salinity", "1", "PSS-78"), "psu pss pss-78 pss78 practicalsalinity"],
  [unit("salinity", "1", "per mille"), "ppt ‰ permille promille o/oo 0/00"],
  [unit("salinity", "g kg-1"), "g/kg gkg-1"],
  [unit("density", "kg m-3"), "kg/m3 kg/m^3 kg/m³ kgm-3 kg.m-3"],
  [unit("density", "g cm-3"), "g/cm3 g/cm^3 g/cm³"],
  [unit("speed", "m s-1"), "m/s ms-1 m.s-1"],
  [unit("speed", "ft s-1"), "ft/s"],
  [
    unit("time", "s"),
    "s sec secs second seconds seconde secondes sekunde sekunden segundo segundos secondi seconden sekunder sek seg",
  ],
  [unit("time", "ms"), "msec millisecond milliseconds"],
  [unit("time", "min"), "min mins minute minutes minuten minuto minutos minuti minuter minutter"],
  [unit("time", "h"), "h hr hrs hour hours heure heures stunde stunden hora horas"],
  [unit("time", "day"), "d day days"],
  [unit("mass-concentration", "mg L-1"), "mg/l mgl-1 mg.l-1"],
  [unit("mass-concentration", "ug L-1"), "ug/l ugl-1 mg/m3 mg/m^3 mg/m³ mgm-3"],
  [unit("mass-concentration", "g m-3"), "g/m3 gm-3"],
  [unit("molar-per-mass", "umol kg-1"), "umol/kg umolkg-1"],
  [unit("molar-per-volume", "umol L-1"), "umol/l umoll-1 mmol/m3 mmolm-3"],
  [unit("volume-ratio", "mL L-1"), "ml/l mll-1"],
  [unit("percent", "percent"), "% percent %sat sat% %saturation %air"],
  [unit("turbidity", "1"), "ntu fnu ftu fau"],
  [unit("voltage", "V"), "v volt volts"],
  [unit("voltage", "mV"), "mv"],
  [unit("none", "1"), "- -- 1 none dimensionless adim"],
];

// spellings whose case decides: MPa is not mPa, K is kelvin, mS is not ms (milliseconds)
const CASED = new Set(["MPa", "Pa", "K", "mS"]);

const TABLE = new Map<string, UnitSpelling>();
for (const [spelling, words] of SPELLINGS) for (const word of words.split(" ")) TABLE.set(word, spelling);

/** A unit's text without blanks and with one sign for each of degree, micro and minus. */
function foldUnit(text: string): string {
  return text
    .normalize("NFC")
    .replace(/[º˚]/g, "°")
    .replace(/[µμ]/g, "u")
    .replace(/[−–]/g, "-")
    .replace(/[⁻]/g, "-")
    .replace(/¹/g, "1")
    .replace(/[·*]/g, ".")
    .replace(/\bdeg(?:rees?)?\.?[\s_]*(?=[CFK]\b)/i, "deg")
    .replace(/\s+per\s+/i, "/")
    .replace(/[\s]+/g, "");
}

/** The unit that a text spells, null if it spells none that is known. */
export const readUnit = remember((text): UnitSpelling | null => {
  const bare = text.trim().replace(/^[[({<]\s*(.*?)\s*[\])}>]$/, "$1");
  const folded = foldUnit(bare);
  if (folded === "" || folded.length > 40) return null;
  if (CASED.has(folded)) return TABLE.get(folded) ?? null;
  const lower = folded.toLowerCase();
  if (lower === "ms" || lower === "mpa" || lower === "pa" || lower === "k") return null;
  return TABLE.get(lower) ?? null;
});
