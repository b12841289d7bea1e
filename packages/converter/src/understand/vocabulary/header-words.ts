import { remember } from "../remember.ts";
import { type Language, plainWords } from "../words.ts";

/** What the words of a header line can be about. */
export type HeaderTopic =
  | "start"
  | "end"
  | "bottom"
  | "time"
  | "date"
  | "clock"
  | "zone"
  | "local"
  | "latitude"
  | "longitude"
  | "position"
  | "cast"
  | "serial"
  | "model"
  | "rating"
  | "satellites"
  | "quality"
  | "sensorDepth"
  | "elsewhere"
  | "missing"
  | "averaged"
  | "zeroed"
  | "lag"
  | "downcast"
  | "upcast"
  | "reversed"
  | "absolute"
  | "gauge"
  | "series";

interface Entry {
  readonly topic: HeaderTopic;
  readonly languages: readonly Language[];
  readonly words: string;
}

const entry = (topic: HeaderTopic, languages: string, words: string): Entry => ({
  topic,
  languages: languages.split(" ") as Language[],
  words,
});

/** Words, or several words that stand together, separated by commas. */
const ENTRIES: readonly Entry[] = [
  entry(
    "start",
    "en",
    "start, started, begin, begins, began, beginning, launch, launched, deployed, opened, first, commenced, let go, release, released, away, t0, t 0, time zero, zero time",
  ),
  entry("start", "fr", "debut, depart, commence, mise a l eau"),
  entry("start", "de", "beginn, anfang, begonnen, startzeit"),
  entry("start", "es pt", "inicio, comienzo"),
  entry("start", "it", "inizio"),
  entry("start", "nl", "begin, aanvang"),
  entry("start", "da no sv", "begyndelse, begynnelse, borjan, starttid"),
  entry("start", "fi is", "alku, alkoi, aloitus, upphaf, byrjun"),
  entry("end", "fi is", "loppu, paattyi, lopetus, endir, lok"),
  entry("time", "fi is", "aika, kellonaika, timi, klukkan"),
  entry("date", "fi is", "paivamaara, pvm, paiva, dagsetning"),
  entry("clock", "fi is", "kello, klukka"),
  entry("zone", "fi is", "aikavyohyke, timabelti"),
  entry("latitude", "fi is", "leveysaste, leveys, breidd, breiddargrada"),
  entry("longitude", "fi is", "pituusaste, pituus, lengd, lengdargrada"),
  entry("position", "fi is", "sijainti, paikka, stadur, stadsetning"),
  entry("missing", "fi is", "puuttuva, puuttuu, ei mittausta, vantar, maelist ekki"),
  entry("bottom", "en", "bottom, at bottom, deepest"),
  entry("bottom", "fr", "fond, au fond"),
  entry("bottom", "de nl da no sv", "grund, am grund, bodem, bund, bunn, botten"),
  entry("bottom", "es pt it", "fondo, fundo"),
  entry(
    "end",
    "en",
    "end, ended, ends, stop, stopped, finish, finished, recovered, recovery, closed, last, aboard, back on deck",
  ),
  entry("end", "fr", "fin, arret, retour"),
  entry("end", "de", "ende, beendet, schluss"),
  entry("end", "es", "fin, final"),
  entry("end", "pt it", "fim, fine"),
  entry("end", "nl", "einde, eind"),
  entry("end", "da no sv", "slut, slutt, sluttid"),
  entry(
    "time",
    "en",
    "time, when, recorded, sampled, taken, timestamp, logged, measured, datetime, clock time, cast time",
  ),
  entry("time", "fr", "heure, horaire, mesure le"),
  entry("time", "de", "zeit, uhrzeit, zeitpunkt, gemessen, messzeit, aufgenommen"),
  entry("time", "es pt", "hora"),
  entry("time", "it", "ora, orario"),
  entry("time", "nl", "tijd, tijdstip, gemeten"),
  entry("time", "da no sv", "tid, klokkeslaet, klokkeslett, klockslag, tidspunkt, tidpunkt"),
  entry("date", "en fr", "date"),
  entry("date", "en", "day"),
  entry("date", "de nl sv", "datum"),
  entry("date", "es", "fecha"),
  entry("date", "pt it", "data"),
  entry("date", "da no", "dato"),
  entry("clock", "en", "clock, clocks, all times, times, times are, time base"),
  entry("clock", "fr", "horloge, heures"),
  entry("clock", "de", "uhr, zeiten, zeitbasis"),
  entry("clock", "nl", "klok, tijden"),
  entry("clock", "es", "reloj, horas"),
  entry("clock", "da no sv", "ur, klokke, klocka"),
  entry(
    "zone",
    "en",
    "zone, time zone, timezone, utc offset, tz, offset from utc, gmt offset, offset to utc, utc difference",
  ),
  entry("zone", "fr", "fuseau, fuseau horaire, decalage utc"),
  entry("zone", "de", "zeitzone"),
  entry("zone", "es", "huso, huso horario, zona horaria"),
  entry("zone", "pt", "fuso, fuso horario"),
  entry("zone", "it", "fuso, fuso orario"),
  entry("zone", "nl", "tijdzone"),
  entry("zone", "da no", "tidszone, tidssone"),
  entry("zone", "sv", "tidszon"),
  entry("local", "en fr de es pt", "local"),
  entry("local", "fr", "locale"),
  entry("local", "de", "ortszeit, lokalzeit"),
  entry("latitude", "en fr pt", "latitude, lat"),
  entry("latitude", "de", "breite, breitengrad"),
  entry("latitude", "es", "latitud"),
  entry("latitude", "it", "latitudine"),
  entry("latitude", "nl", "breedte, breedtegraad"),
  entry("latitude", "da no sv", "breddegrad, bredde, latitud"),
  entry("longitude", "en fr pt", "longitude, lon, long, lng"),
  entry("longitude", "de", "laenge, lange, langengrad"),
  entry("longitude", "es", "longitud"),
  entry("longitude", "it", "longitudine"),
  entry("longitude", "nl", "lengte, lengtegraad"),
  entry("longitude", "da no sv", "laengdegrad, lengdegrad, lengde, longitud"),
  entry(
    "position",
    "en fr",
    "position, pos, fix, gps, where, location, coordinates, coords, gps fix, place at",
  ),
  entry("position", "fr", "lieu, coordonnees, point"),
  entry("position", "de", "ort, koordinaten, standort"),
  entry("position", "es", "posicion, coordenadas"),
  entry("position", "pt", "posicao, coordenadas"),
  entry("position", "it", "posizione, coordinate"),
  entry("position", "nl", "positie, coordinaten"),
  entry("position", "da no sv", "posisjon, koordinater"),
  entry(
    "cast",
    "en",
    "cast, cast id, cast no, cast number, cast name, profile, profile id, dip, drop, lowering, lowering no, cast nr, record, haul",
  ),
  entry("cast", "fr de", "profil"),
  entry("cast", "es", "perfil, lance"),
  entry("cast", "it nl", "profilo, profiel"),
  entry("cast", "da no sv", "stasjonsnummer"),
  entry(
    "serial",
    "en",
    "serial, serial number, serial no, s n, sn, ser no, instrument serial, probe number, instrument number, sensor number, unit number",
  ),
  entry("serial", "fr", "numero de serie, no de serie, n de serie"),
  entry("serial", "de", "seriennummer, serien nr, geratenummer, sn"),
  entry("serial", "es", "numero de serie, n de serie"),
  entry("serial", "pt it", "numero de serie, numero di serie, matricola"),
  entry("serial", "nl", "serienummer"),
  entry("serial", "da no sv", "serienummer"),
  entry(
    "model",
    "en",
    "model, instrument, instrument model, instrument type, probe, ctd, device, sensor type, probe type, sonde, apparatus, gauge type",
  ),
  entry("model", "fr", "appareil, instrument, sonde, modele"),
  entry("model", "de", "gerat, sonde, geratetyp, messgerat, modell"),
  entry("model", "es pt", "instrumento, modelo, sonda, aparato"),
  entry("model", "it", "strumento, modello, sonda"),
  entry("model", "nl", "instrument, toestel, apparaat"),
  entry(
    "rating",
    "en",
    "rated, rating, rated depth, rated pressure, maximum pressure rating, depth rating, pressure rating, rated to, max rated, good to",
  ),
  entry("rating", "fr", "profondeur maximale, pression maximale, limite de pression, immersion maximale"),
  entry("rating", "de", "nenntiefe, nenndruck, maximaltiefe, druckfest bis"),
  entry("rating", "es", "profundidad maxima, presion maxima"),
  entry("satellites", "en", "satellites, sats, satellite, sat, nsat, sv used, satellites used"),
  entry("satellites", "de", "satelliten"),
  entry("satellites", "es pt", "satelites"),
  entry("satellites", "it nl", "satelliti, satellieten"),
  entry("satellites", "da no sv", "satellitter, satelliter"),
  entry("quality", "en", "fix quality, hdop, pdop, dop, quality, accuracy"),
  entry(
    "sensorDepth",
    "en",
    "sensor depth, fixed depth, depth of sensor, mooring depth, hung at, held at, instrument depth, nominal depth, depth of instrument, deployment depth, measuring depth",
  ),
  entry("sensorDepth", "fr", "profondeur du capteur, profondeur fixe, immersion du capteur"),
  entry("sensorDepth", "de", "sensortiefe, messtiefe, einbautiefe, feste tiefe"),
  entry("sensorDepth", "es", "profundidad del sensor, profundidad fija"),
  entry("sensorDepth", "nl", "meetdiepte, sensordiepte"),
  entry("sensorDepth", "da no sv", "sensordybde, maledybde, sensordjup, matdjup"),
  entry(
    "elsewhere",
    "en",
    "calibration, calibrated, cal, created, exported, export, printed, downloaded, download, firmware, serviced, service, software, version, processed, manufactured, battery, licence, license, checked, synchronised, synchronized, set, updated, report, purchased, harbour, harbor, waypoint, home, base, mobilised, due, file, high water, low water, sunrise, sunset, tide, anchor, previous",
  ),
  entry("elsewhere", "fr", "etalonnage, etalonne, exporte, imprime, telecharge, logiciel, verifie"),
  entry(
    "elsewhere",
    "de",
    "kalibrierung, kalibriert, exportiert, gedruckt, erstellt, gewartet, ausgelesen, gepruft",
  ),
  entry("elsewhere", "es", "calibracion, calibrado, exportado, impreso, creado"),
  entry("elsewhere", "it pt", "calibrazione, calibracao, esportato, exportado"),
  entry("elsewhere", "nl", "ijking, geijkt, gekalibreerd, gemaakt"),
  entry("elsewhere", "da no sv", "kalibrering, kalibrert, kalibreret, kalibrerad, eksporteret, skapad"),
  entry(
    "missing",
    "en",
    "no reading, no data, nodata, missing, missing value, bad value, absent, invalid, not measured, no value, fill, gap, error value, dropout, empty, blank",
  ),
  entry(
    "missing",
    "fr",
    "manquant, manquante, valeur manquante, donnee absente, absent, pas de mesure, pas de donnee",
  ),
  entry("missing", "de", "fehlwert, fehlt, kein wert, keine messung, ungultig, fehlende werte"),
  entry("missing", "es", "sin dato, sin datos, faltante, dato ausente"),
  entry("missing", "it pt", "mancante, dato mancante, sem dados, ausente"),
  entry("missing", "nl", "ontbreekt, geen waarde, ontbrekend"),
  entry("missing", "da no sv", "mangler, manglende, saknas, mangel"),
  entry(
    "averaged",
    "en",
    "averaged, average, averages, binned, bin, bins, mean values, layer means, bin averaged, averaging, means",
  ),
  entry("averaged", "fr", "moyenne, moyennes, moyennees"),
  entry("averaged", "de", "gemittelt, mittelwerte"),
  entry("averaged", "es", "promedio, promediado, promedios"),
  entry("averaged", "it pt", "medie, media, medias"),
  entry("averaged", "nl", "gemiddeld, gemiddelden"),
  entry("averaged", "da no", "gennemsnit, gennemsnitsvaerdier, midlet, gjennomsnitt, middelverdier"),
  entry("averaged", "sv", "medelvarden, medelvarde, medelvardesbildad"),
  entry("averaged", "fi is", "keskiarvo, keskiarvot, keskiarvoistettu, medaltal, medaltol"),
  entry(
    "zeroed",
    "en",
    "zeroed, tared, tare, pressure zeroed, air pressure subtracted, atmospheric pressure removed, corrected for air pressure, atmosphere removed",
  ),
  entry("zeroed", "fr", "pression atmospherique soustraite, tare, tarage"),
  entry("zeroed", "de", "tariert, luftdruck abgezogen"),
  entry("zeroed", "es", "presion atmosferica restada, tarado, tarada, puesto a cero, puesta a cero"),
  entry("zeroed", "pt", "pressao atmosferica subtraida, tarado, tarada"),
  entry("zeroed", "it", "pressione atmosferica sottratta, azzerata, azzerato, tarata"),
  entry("zeroed", "nl", "luchtdruk afgetrokken, op nul gezet, getarreerd"),
  entry(
    "zeroed",
    "da no sv",
    "lufttryk fratrukket, lufttrykk trukket fra, nulstillet, nullstilt, nollstalld",
  ),
  entry("zeroed", "fi is", "ilmanpaine vahennetty, nollattu, nullstillt, nullstilltur"),
  entry(
    "lag",
    "en",
    "lag corrected, lag correction, sensor lag, time constant corrected, response corrected, aligned",
  ),
  entry("lag", "fr", "retard corrige, retard du capteur corrige, correction de retard, correction du retard"),
  entry("lag", "de", "verzogerung korrigiert, tragheit korrigiert, ansprechzeit korrigiert"),
  entry("lag", "es", "retardo corregido, retardo del sensor corregido, correccion de retardo"),
  entry("lag", "pt", "atraso corrigido, atraso do sensor corrigido, correcao de atraso"),
  entry("lag", "it", "ritardo corretto, ritardo del sensore corretto, correzione del ritardo"),
  entry("lag", "nl", "vertraging gecorrigeerd, responstijd gecorrigeerd"),
  entry("lag", "da no sv", "forsinkelse korrigeret, forsinkelse korrigert, fordrojning korrigerad"),
  entry("downcast", "fr", "descente seule, descente seulement, profil descendant"),
  entry("downcast", "de", "nur abwarts, abwartsprofil, nur absenken"),
  entry("downcast", "es pt it", "solo bajada, solo descenso, so descida, apenas descida, solo discesa"),
  entry("downcast", "nl", "alleen neerwaarts, neergaand profiel"),
  entry("downcast", "da no sv", "kun nedad, kun nedtur, endast ned, nedfard"),
  entry("downcast", "fi is", "vain lasku, adeins nidur"),
  entry("upcast", "fr", "remontee seule, remontee seulement, profil remontant"),
  entry("upcast", "de", "nur aufwarts, aufwartsprofil"),
  entry("upcast", "es pt it", "solo subida, so subida, apenas subida, solo risalita"),
  entry("upcast", "nl", "alleen opwaarts, opgaand profiel"),
  entry("upcast", "da no sv", "kun opad, kun opptur, endast upp, uppfard"),
  entry("upcast", "fi is", "vain nosto, adeins upp"),
  entry("reversed", "en", "reversed, turned round, inverted, flipped, sorted downward"),
  entry("reversed", "fr de", "inverse, inversee, retourne, umgedreht, umgekehrt"),
  entry("reversed", "es pt it", "invertido, invertida, invertito, invertita"),
  entry("reversed", "nl da no sv", "omgekeerd, vendt, snudd, omvand"),
  entry("downcast", "en", "downcast only, down cast only, descent only, downcast, down only"),
  entry("upcast", "en", "upcast only, up cast only, ascent only, upcast, up only"),
  entry("absolute", "en fr", "absolute, absolu, absolue"),
  entry("absolute", "de es it", "absolut, absoluta, assoluta"),
  entry("gauge", "en", "gauge, gage, relative, sea pressure"),
  entry("series", "en", "time series, fixed depth, moored, mooring, series at, fixed point, stationary"),
  entry("series", "fr", "serie temporelle, mouillage, point fixe"),
  entry("series", "de", "zeitreihe, dauermessung, verankerung"),
  entry("series", "es", "serie temporal, fondeo"),
];

interface Phrase {
  readonly topic: HeaderTopic;
  readonly languages: readonly Language[];
}

const PHRASES = new Map<string, Phrase[]>();
/** First words of the phrases: most words of a line begin none, and need no joining. */
const OPENING = new Set<string>();
let longest = 1;
for (const { topic, languages, words } of ENTRIES) {
  for (const part of words.split(",")) {
    const key = plainWords(part);
    longest = Math.max(longest, key.split(" ").length);
    const known = PHRASES.get(key) ?? [];
    known.push({ topic, languages });
    PHRASES.set(key, known);
    OPENING.add(key.split(" ")[0]!);
  }
}

/** Topics of a header line's words, with the phrase that says so. */
export const headerTopics = (tokens: readonly string[]): ReadonlyMap<HeaderTopic, string> =>
  topicsOf(tokens.join(" "));

const topicsOf = remember((text): ReadonlyMap<HeaderTopic, string> => {
  const tokens = text.split(" ");
  const found = new Map<HeaderTopic, string>();
  for (let i = 0; i < tokens.length; i++) {
    if (!OPENING.has(tokens[i]!)) continue;
    for (let n = Math.min(longest, tokens.length - i); n >= 1; n--) {
      const phrase = tokens.slice(i, i + n).join(" ");
      for (const { topic } of PHRASES.get(phrase) ?? []) if (!found.has(topic)) found.set(topic, phrase);
    }
  }
  return found;
});

// words that only tell the language
const LANGUAGE_WORDS: readonly (readonly [string, string])[] = [
  ["en", "the of and at with by water depth salinity pressure cast station start end site survey"],
  ["fr", "le la les du des sortie bateau heure locale profondeur baie avec capteur sonde eau mesure et"],
  ["de", "der die das und mit beim am im vom ort zeit tiefe messung boot fahrt hafen wetter gerat"],
  ["es", "el los las del bahia barco salida hora lugar sonda con estacion"],
  ["pt", "o da do dos baia barco saida hora lugar com estacao"],
  ["it", "il della del dello barca uscita stazione con ora"],
  ["nl", "het een en van met boot vaart meting tijd diepte haven"],
  ["fi", "ja asema vene satama syvyys mittaus luotaus lampotila suolaisuus"],
  ["is", "og fra bat hofn dypi maeling selta hitastig"],
  ["da no sv", "og och med fra fran ved vid bat bad havn hamn dybde djup maling matning"],
];

const MARKS = new Map<string, string[]>();
for (const [codes, words] of LANGUAGE_WORDS) {
  for (const word of words.split(" ")) MARKS.set(word, [...(MARKS.get(word) ?? []), ...codes.split(" ")]);
}

const NOT = new Set(
  "not no none without never un nicht kein keine keinen ohne non pas sans aucun aucune sin ningun ninguna sem nao nenhuma nenhum senza nessuna nessun niet geen zonder ikke ingen uden uten inte ej utan ei ilman ekki engin".split(
    " ",
  ),
);
const OFF = /^(?:no|none|off|not|0|false|nein|aus|keine?|non|aucune?|nej|nei|geen|n|-)\b/;

/** Whether the words of a line deny what one of its topics says: "not averaged", "lag correction: none". */
export function denies(tokens: readonly string[], phrase: string): boolean {
  const words = phrase.split(" ");
  const at = tokens.findIndex((_, i) => words.every((word, k) => tokens[i + k] === word));
  if (at < 0) return false;
  return (
    tokens.slice(Math.max(0, at - 3), at + words.length).some((word) => NOT.has(word)) ||
    OFF.test(tokens.slice(at + words.length).join(" "))
  );
}

/** Languages that a word or phrase of a header belongs to; empty if it tells nothing. */
export function languagesOfWord(word: string): readonly string[] {
  const phrases = PHRASES.get(word)?.flatMap(({ languages }) => languages) ?? [];
  return [...new Set([...phrases, ...(MARKS.get(word) ?? [])])];
}
