import { remember } from "../remember.ts";
import { type Language, plainWords } from "../words.ts";
import type { QuantityId } from "./quantities.ts";

/** What the head of a column can name beside a quantity. */
export type ColumnRole =
  | QuantityId
  | "ec"
  | "conductivity_ratio"
  | "datetime"
  | "date"
  | "time"
  | "elapsed"
  | "cast"
  | "station"
  | "latitude"
  | "longitude"
  | "satellites"
  | "flag"
  | "air"
  | "sounding";

interface Entry {
  readonly role: ColumnRole;
  readonly language: Language;
  /** Names separated by commas. */
  readonly words: string;
}

const entry = (role: ColumnRole, language: Language, words: string): Entry => ({ role, language, words });

/** Names of columns in the languages of the coast. A name must fit whole, after qualifiers are left away. */
const ENTRIES: readonly Entry[] = [
  entry(
    "pressure",
    "en",
    "pressure, press, pres, prs, sea pressure, water pressure, gauge pressure, pressure gauge",
  ),
  entry("pressure", "fr", "pression"),
  entry("pressure", "de", "druck, wasserdruck"),
  entry("pressure", "es", "presion"),
  entry("pressure", "pt", "pressao"),
  entry("pressure", "it", "pressione"),
  entry("pressure", "nl", "druk, waterdruk"),
  entry("pressure", "da", "tryk"),
  entry("pressure", "no", "trykk"),
  entry("pressure", "sv", "tryck"),
  entry("pressure", "fi", "paine"),
  entry("pressure", "is", "thrystingur"),
  entry(
    "absolute_pressure",
    "en",
    "absolute pressure, pressure absolute, abs pressure, pressure abs, abs press, press abs",
  ),
  entry("absolute_pressure", "fr", "pression absolue"),
  entry("absolute_pressure", "de", "absolutdruck, druck absolut"),
  entry("absolute_pressure", "es", "presion absoluta"),
  entry("absolute_pressure", "pt", "pressao absoluta"),
  entry("absolute_pressure", "it", "pressione assoluta"),
  entry("absolute_pressure", "nl", "absolute druk"),
  entry("absolute_pressure", "da", "absolut tryk"),
  entry("absolute_pressure", "no", "absolutt trykk"),
  entry("absolute_pressure", "sv", "absolut tryck, absoluttryck"),
  entry("absolute_pressure", "fi", "absoluuttinen paine"),
  entry("depth", "en", "depth, dep, depth below surface, depth below the surface, depth of sensor"),
  entry("depth", "fr", "profondeur, prof, immersion"),
  entry("depth", "de", "tiefe, messtiefe, tiefe unter oberflache"),
  entry("depth", "es", "profundidad"),
  entry("depth", "pt", "profundidade"),
  entry("depth", "it", "profondita"),
  entry("depth", "nl", "diepte"),
  entry("depth", "da", "dybde"),
  entry("depth", "no", "dyp, djup"),
  entry("depth", "sv", "djup"),
  entry("depth", "fi", "syvyys"),
  entry("depth", "is", "dypi"),
  entry(
    "temperature",
    "en",
    "temperature, temp, tmp, water temperature, temperature its 90, temperature ipts 68, t 90, t90, t 68, t68",
  ),
  entry("temperature", "fr", "temperature, temp, temperature de l eau, temperature eau"),
  entry("temperature", "de", "temperatur, temp, wassertemperatur, wassertemp"),
  entry("temperature", "es", "temperatura, temp"),
  entry("temperature", "pt", "temperatura, temp"),
  entry("temperature", "it", "temperatura, temp"),
  entry("temperature", "nl", "temperatuur, temp, watertemperatuur"),
  entry("temperature", "da", "temperatur, vandtemperatur"),
  entry("temperature", "no", "temperatur, sjotemperatur, vanntemperatur"),
  entry("temperature", "sv", "temperatur, vattentemperatur"),
  entry("temperature", "fi", "lampotila, veden lampotila"),
  entry("temperature", "is", "hitastig, sjavarhiti, hiti"),
  entry("conductivity", "en", "conductivity, cond, cndc, electrical conductivity"),
  entry("conductivity", "fr", "conductivite, cond"),
  entry("conductivity", "de", "leitfahigkeit, elektrische leitfahigkeit, leitf"),
  entry("conductivity", "es", "conductividad"),
  entry("conductivity", "pt", "condutividade"),
  entry("conductivity", "it", "conducibilita, conduttivita"),
  entry("conductivity", "nl", "geleidbaarheid, geleiding, geleidingsvermogen"),
  entry("conductivity", "da", "ledningsevne, konduktivitet"),
  entry("conductivity", "no", "konduktivitet, ledningsevne"),
  entry("conductivity", "sv", "konduktivitet, ledningsformaga"),
  entry("conductivity", "fi", "johtavuus, sahkonjohtavuus"),
  entry("conductivity", "is", "leidni, rafleidni"),
  entry(
    "specific_conductance",
    "en",
    "specific conductance, specific conductivity, spec cond, sp cond, spcond, spc, sp c, sc, ec 25, ec25, conductivity 25, cond 25, cond25, cond at 25 c, cond 25 c, conductivity at 25 c, conductivity 25 c, conductivity at 25 deg c, conductance 25, ec at 25 c, ec 25 c",
  ),
  entry(
    "specific_conductance",
    "fr",
    "conductivite a 25 c, conductivite 25, conductivite specifique, conductance specifique",
  ),
  entry(
    "specific_conductance",
    "de",
    "leitfahigkeit 25, leitfahigkeit 25 c, leitfahigkeit bei 25 c, spezifische leitfahigkeit",
  ),
  entry(
    "specific_conductance",
    "es",
    "conductancia especifica, conductividad a 25 c, conductividad especifica",
  ),
  entry("specific_conductance", "it", "conducibilita a 25 c, conducibilita specifica"),
  entry("specific_conductance", "nl", "geleidbaarheid 25, geleidbaarheid bij 25 c"),
  entry("specific_conductance", "pt", "condutividade especifica"),
  entry("specific_conductance", "da", "specifik ledningsevne"),
  entry("specific_conductance", "no", "spesifikk konduktivitet, spesifikk ledningsevne"),
  entry("specific_conductance", "sv", "specifik konduktivitet"),
  entry("specific_conductance", "fi", "ominaisjohtavuus"),
  entry(
    "conductivity_ratio",
    "en",
    "conductivity ratio, cond ratio, ratio of conductivity, conductance ratio",
  ),
  entry("conductivity_ratio", "fr", "rapport de conductivite"),
  entry("conductivity_ratio", "de", "leitfahigkeitsverhaltnis"),
  entry("conductivity_ratio", "es", "razon de conductividad, relacion de conductividad"),
  entry("conductivity_ratio", "pt", "razao de condutividade"),
  entry("conductivity_ratio", "it", "rapporto di conducibilita"),
  entry("ec", "en", "ec, conductance, conductiv ec"),
  entry("ec", "de", "lf, leitwert"),
  entry("ec", "nl", "egv"),
  entry("salinity", "en", "salinity, sal, psal, practical salinity, salt, sal pss 78, salinity pss 78, sp"),
  entry("salinity", "fr", "salinite, sal, salinite pratique"),
  entry("salinity", "de", "salzgehalt, salinitat, praktischer salzgehalt, sal"),
  entry("salinity", "es", "salinidad"),
  entry("salinity", "pt", "salinidade"),
  entry("salinity", "it", "salinita"),
  entry("salinity", "nl", "saliniteit, zoutgehalte"),
  entry("salinity", "da", "saltholdighed, salinitet"),
  entry("salinity", "no", "saltholdighet, salinitet, saltinnhold"),
  entry("salinity", "sv", "salthalt, salinitet"),
  entry("salinity", "fi", "suolaisuus, suolapitoisuus"),
  entry("salinity", "is", "selta"),
  entry("absolute_salinity", "en", "absolute salinity, sa"),
  entry("density", "en", "density, dens, water density"),
  entry("density", "fr", "densite, masse volumique"),
  entry("density", "de", "dichte"),
  entry("density", "es", "densidad"),
  entry("density", "pt", "densidade"),
  entry("density", "it", "densita"),
  entry("density", "nl", "dichtheid"),
  entry("density", "da", "densitet, massefylde"),
  entry("density", "no", "tetthet"),
  entry("density", "sv", "densitet"),
  entry("density", "fi", "tiheys"),
  entry("density", "is", "edlismassi"),
  entry("sigma_t", "en", "sigma t, sigmat"),
  entry(
    "sound_speed",
    "en",
    "sound speed, speed of sound, sound velocity, velocity of sound, sv, svel, sound vel, soundspeed, sos",
  ),
  entry("sound_speed", "fr", "vitesse du son, celerite, celerite du son"),
  entry("sound_speed", "de", "schallgeschwindigkeit"),
  entry("sound_speed", "es", "velocidad del sonido"),
  entry("sound_speed", "pt", "velocidade do som"),
  entry("sound_speed", "it", "velocita del suono"),
  entry("sound_speed", "nl", "geluidssnelheid"),
  entry("sound_speed", "da", "lydhastighed"),
  entry("sound_speed", "no", "lydhastighet"),
  entry("sound_speed", "sv", "ljudhastighet"),
  entry("sound_speed", "fi", "aanen nopeus, aanennopeus"),
  entry("sound_speed", "is", "hljodhradi"),
  entry(
    "oxygen",
    "en",
    "oxygen, dissolved oxygen, do, o2, oxy, doxy, dissolved o2, oxygen saturation, do sat, oxygen sat",
  ),
  entry("oxygen", "fr", "oxygene, oxygene dissous"),
  entry("oxygen", "de", "sauerstoff, o 2, sauerstoffgehalt, sauerstoffsattigung"),
  entry("oxygen", "es", "oxigeno, oxigeno disuelto"),
  entry("oxygen", "pt", "oxigenio"),
  entry("oxygen", "it", "ossigeno, ossigeno disciolto"),
  entry("oxygen", "nl", "zuurstof"),
  entry("oxygen", "da", "ilt, oxygen"),
  entry("oxygen", "no", "oksygen"),
  entry("oxygen", "sv", "syre, syrgas"),
  entry("oxygen", "fi", "happi, liuennut happi"),
  entry("oxygen", "is", "surefni"),
  entry("turbidity", "en", "turbidity, turb"),
  entry("turbidity", "fr", "turbidite"),
  entry("turbidity", "de", "trubung"),
  entry("turbidity", "es", "turbidez"),
  entry("turbidity", "it", "torbidita"),
  entry("turbidity", "nl", "troebelheid, turbiditeit"),
  entry("turbidity", "no", "turbiditet"),
  entry("turbidity", "pt", "turbidez"),
  entry("turbidity", "da", "turbiditet, uklarhed"),
  entry("turbidity", "sv", "turbiditet, grumlighet"),
  entry("turbidity", "fi", "sameus"),
  entry("turbidity", "is", "grugg"),
  entry("chlorophyll", "en", "chlorophyll, chl, chla, chl a, chlorophyll a"),
  entry("chlorophyll", "fr", "chlorophylle, chlorophylle a"),
  entry("chlorophyll", "es", "clorofila"),
  entry("chlorophyll", "it", "clorofilla"),
  entry("chlorophyll", "pt", "clorofila"),
  entry("chlorophyll", "nl", "chlorofyl"),
  entry("chlorophyll", "da", "klorofyl"),
  entry("chlorophyll", "no", "klorofyll"),
  entry("chlorophyll", "sv", "klorofyll"),
  entry("chlorophyll", "fi", "klorofylli"),
  entry("fluorescence", "en", "fluorescence, fluor, fluo"),
  entry("fluorescence", "de", "fluoreszenz"),
  entry("fluorescence", "es", "fluorescencia"),
  entry("fluorescence", "pt", "fluorescencia"),
  entry("fluorescence", "it", "fluorescenza"),
  entry("fluorescence", "nl", "fluorescentie"),
  entry("fluorescence", "da", "fluorescens"),
  entry("fluorescence", "sv", "fluorescens"),
  entry("fluorescence", "no", "fluorescens"),
  entry("ph", "en", "ph, p h"),
  entry("battery", "en", "battery, batt, bat, battery voltage, batt v, battery volts, supply"),
  entry("battery", "fr", "batterie, pile"),
  entry("battery", "de", "batterie, batteriespannung"),
  entry("battery", "es", "bateria"),
  entry("battery", "nl", "batterij, accu"),
  entry("battery", "pt", "bateria"),
  entry("battery", "it", "batteria"),
  entry("battery", "da", "batteri, batterispaending"),
  entry("battery", "no", "batteri, batterispenning"),
  entry("battery", "sv", "batteri, batterispanning"),
  entry("battery", "fi", "akku, paristo"),
  entry(
    "sample",
    "en",
    "sample, sample number, sample no, scan, scan number, n, no, nr, num, number, index, record, rec, row, reading, count, line",
  ),
  entry("sample", "fr", "numero, mesure"),
  entry("sample", "de", "nummer, lfd nr, messung"),
  entry("sample", "es", "numero, muestra"),
  entry("sample", "pt", "amostra"),
  entry("sample", "it", "campione"),
  entry("sample", "nl", "monster"),
  entry("sample", "da", "prove"),
  entry("sample", "sv", "prov"),
  entry(
    "datetime",
    "en",
    "datetime, date time, date and time, timestamp, time stamp, when, utc, gmt, utc time, time utc, date utc time utc, local time, date time utc, date time local, clock",
  ),
  entry("datetime", "fr", "date heure, date et heure, horodatage"),
  entry("datetime", "de", "datum zeit, datum uhrzeit, zeitstempel, zeitpunkt, messzeit"),
  entry("datetime", "es", "fecha hora, fecha y hora"),
  entry("datetime", "pt", "data hora, data e hora"),
  entry("datetime", "it", "data ora, data e ora"),
  entry("datetime", "nl", "datum tijd, tijdstip"),
  entry("datetime", "da", "dato tid, tidspunkt"),
  entry("datetime", "sv", "datum tid, tidpunkt"),
  entry("date", "en", "date, day, date utc, utc date, local date, yyyymmdd"),
  entry("date", "fr", "date, jour"),
  entry("date", "de", "datum, tag"),
  entry("date", "es", "fecha"),
  entry("date", "pt", "data"),
  entry("date", "it", "data"),
  entry("date", "nl", "datum"),
  entry("date", "da", "dato"),
  entry("date", "no", "dato"),
  entry("date", "sv", "datum"),
  entry("date", "fi", "paivamaara, pvm"),
  entry("date", "is", "dagsetning"),
  entry("time", "en", "time, time of day, hhmmss"),
  entry("time", "fr", "heure, heure locale, temps"),
  entry("time", "de", "zeit, uhrzeit, ortszeit"),
  entry("time", "es", "hora, hora local, tiempo"),
  entry("time", "pt", "hora, tempo"),
  entry("time", "it", "ora, tempo"),
  entry("time", "nl", "tijd"),
  entry("time", "da", "tid, klokkeslaet"),
  entry("time", "no", "tid, klokkeslett"),
  entry("time", "sv", "tid, klockslag"),
  entry("time", "fi", "aika, kellonaika, klo"),
  entry("time", "is", "timi, klukkan"),
  entry(
    "elapsed",
    "en",
    "elapsed, elapsed time, time elapsed, elapsed seconds, seconds since start, time since start, run time, since start, seconds, minutes, elapsed s, secs",
  ),
  entry("elapsed", "fr", "temps ecoule, duree, secondes"),
  entry("elapsed", "de", "laufzeit, sekunden, zeit seit start, sekunde, messdauer"),
  entry("elapsed", "es", "segundos, tiempo transcurrido"),
  entry("elapsed", "it", "secondi, tempo trascorso"),
  entry("elapsed", "nl", "seconden, verstreken tijd"),
  entry("elapsed", "no", "sekunder, medgatt tid"),
  entry("elapsed", "pt", "tempo decorrido"),
  entry("elapsed", "da", "forlobet tid"),
  entry("elapsed", "sv", "forfluten tid"),
  entry("elapsed", "fi", "kulunut aika, sekuntia"),
  entry(
    "cast",
    "en",
    "cast, cast id, cast no, cast number, profile, profile id, profile number, dip, lowering, drop",
  ),
  entry("cast", "fr", "profil"),
  entry("cast", "de", "profil"),
  entry("cast", "es", "perfil, lance"),
  entry("cast", "pt", "perfil"),
  entry("cast", "it", "profilo"),
  entry("cast", "nl", "profiel"),
  entry("station", "en", "station, station id, station name, station no, site, stn, sta"),
  entry("station", "es", "estacion"),
  entry("station", "pt", "estacao"),
  entry("station", "it", "stazione"),
  entry("latitude", "en", "latitude, lat, lat deg, latitude deg, latitude n, lat n"),
  entry("latitude", "de", "breite, breitengrad, geogr breite"),
  entry("latitude", "es", "latitud"),
  entry("latitude", "it", "latitudine"),
  entry("latitude", "nl", "breedte, breedtegraad"),
  entry("latitude", "no", "breddegrad"),
  entry("latitude", "da", "bredde"),
  entry("latitude", "fi", "leveysaste"),
  entry("latitude", "is", "breidd, breiddargrada"),
  entry("longitude", "en", "longitude, lon, long, lng, lon deg, longitude deg, longitude e, lon e"),
  entry("longitude", "de", "lange, langengrad, geogr lange"),
  entry("longitude", "es", "longitud"),
  entry("longitude", "it", "longitudine"),
  entry("longitude", "nl", "lengte, lengtegraad"),
  entry("longitude", "no", "lengdegrad"),
  entry("longitude", "da", "laengde, laengdegrad"),
  entry("longitude", "sv", "longitud"),
  entry("longitude", "fi", "pituusaste"),
  entry("longitude", "is", "lengd, lengdargrada"),
  entry("satellites", "en", "satellites, sats, sat, nsat"),
  entry("flag", "en", "flag, flags, qc, quality, quality flag, qf, qc flag"),
  entry("flag", "fr", "qualite"),
  entry("flag", "de", "qualitat"),
  entry(
    "air",
    "en",
    "air temperature, air temp, air pressure, barometer, atmospheric pressure, box temperature, internal temperature, board temperature, case temperature",
  ),
  entry("sounding", "en", "water depth, sounding, bottom depth, echo sounder, depth of water"),
  entry("sounding", "de", "wassertiefe, lotung"),
];

// words that narrow nothing: they may stand beside a name
const QUALIFIERS = new Set(
  "in situ insitu sea seawater water raw measured sensor probe ctd eau mer wasser agua mar mare acqua vatten sjo vann vand value mean avg average the of de du in degrees".split(
    " ",
  ),
);

export interface NamedRole {
  readonly role: ColumnRole;
  readonly languages: readonly Language[];
  /** The words that fit. */
  readonly words: string;
}

const NAMES = new Map<string, NamedRole>();
for (const { role, language, words } of ENTRIES) {
  for (const phrase of words.split(",")) {
    const key = plainWords(phrase);
    const known = NAMES.get(key);
    if (!known) NAMES.set(key, { role, languages: [language], words: key });
    else if (known.role === role) NAMES.set(key, { ...known, languages: [...known.languages, language] });
  }
}

/** What a name (without its unit) stands for; null if nothing known. One-letter names are not looked up here. */
export const roleOfName = remember((name): NamedRole | null => {
  const plain = plainWords(name);
  if (plain === "" || plain.length > 60) return null;
  const whole = NAMES.get(plain);
  if (whole) return whole;
  const joined = NAMES.get(plain.replaceAll(" ", ""));
  if (joined && plain.length > 3) return joined;
  const tokens = plain.split(" ").filter((token) => !QUALIFIERS.has(token));
  const core = NAMES.get(tokens.join(" "));
  if (core) return core;
  // "spc @25 C": any word for conductivity beside 25 degrees
  if (/(?:^| )25/.test(plain)) {
    const rest = plain.replace(/ ?(?:at|a|bei|bij|ved|vid)? ?25 ?(?:deg|grad)? ?c?$/, "");
    const found = NAMES.get(rest);
    if (found && ["conductivity", "ec", "specific_conductance"].includes(found.role))
      return { ...found, role: "specific_conductance" };
  }
  // "temp 1", "temperature2": the number only tells sensors apart
  const last = tokens.at(-1) ?? "";
  const numbered =
    /^([a-z]+?)(\d)$/.exec(tokens.join(" "))?.[1] ?? (/^\d$/.test(last) ? tokens.slice(0, -1).join(" ") : "");
  return numbered === "" || numbered.length < 3 ? null : (NAMES.get(numbered) ?? null);
});

/** Names of one letter: only believed when the unit says the same. */
export const LETTER_ROLES: Readonly<Record<string, readonly QuantityId[]>> = {
  z: ["depth"],
  d: ["depth"],
  p: ["pressure"],
  t: ["temperature"],
  s: ["salinity"],
  c: ["conductivity"],
};

/** All languages a word of a column name belongs to. */
export const languagesOfName = (name: string): readonly Language[] => roleOfName(name)?.languages ?? [];
