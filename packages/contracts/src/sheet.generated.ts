/** Types of schemas/sheet.schema.json. Made by tools/generate.ts; change the schema, not this file. */

export type Text = string;
/**
 * ROR of the institution, as https://ror.org/03yrm5c26.
 */
export type Ror = string;
/**
 * ORCID of the person, as 0000-0002-1825-0097.
 */
export type Orcid = string;
/**
 * An e-mail address.
 */
export type Email = string;
/**
 * An absolute address, as https://estuary.example.org or doi:10.1000/182.
 */
export type Url = string;
/**
 * Year-month-day, as 2024-02-11.
 */
export type Date = string;

/**
 * What a person knows about a survey and its files cannot tell: who, with what, under which licence, and answers to what the files leave open.
 */
export interface SurveySheet {
  /**
   * Place of this schema, for editors that complete and check.
   */
  $schema?: string;
  /**
   * Version of the form of this sheet; always 1.
   */
  version: 1;
  /**
   * Path of a base sheet, or of several, from the folder of this one: what they tell of the boat, the instrument or the people holds here too unless this sheet says otherwise.
   */
  inherit?: Text | [Text, ...Text[]];
  /**
   * Moment, in UTC, that every date of writing in the products is taken from. The same sheet and files then give the same bytes on any later day.
   */
  created?: string;
  survey: SurveyIdentity;
  people?: People;
  /**
   * What the instrument was lowered from. The first one is meant where a cast names none.
   */
  platforms?: Platform[];
  /**
   * Instruments used. A cast without an instrument of its own belongs to the one whose serial number its file tells, else to the first.
   */
  instruments?: Instrument[];
  processing?: ProcessingChoices;
  exchange?: ExchangeFiles;
  /**
   * Notes files on how exports of one kind are read, by their paths from this sheet. The answers below go before theirs.
   */
  notes?: Text[];
  /**
   * The field log, a CSV file, by its path from this sheet: what was written down of each cast.
   */
  field_log?: string;
  /**
   * Answers to what the files leave open. The program prints the line to add with each question.
   */
  answers?: Answer[];
  /**
   * The casts with their ids. Written by the program; an id stays for good, so that a later correction does not make a new cast.
   */
  casts?: ListedCast[];
}
/**
 * What the data set is called and how it stands in the world.
 */
export interface SurveyIdentity {
  /**
   * Short name of the data set in letters, digits, points, underscores and hyphens; the names of all files written begin with it. Unique within the naming authority.
   */
  id: string;
  /**
   * One short phrase for people.
   */
  title?: string;
  /**
   * A few sentences: what was measured, where, when, how and why.
   */
  summary?: string;
  /**
   * Key words beside the standard names of the variables, which the program adds by itself.
   */
  keywords?: Text[];
  /**
   * Vocabulary that your own key words come from, if any.
   */
  keywords_vocabulary?: string;
  /**
   * Who vouches that the id is unique: an internet name turned round, as org.example.estuary, or an address.
   */
  naming_authority?: string;
  /**
   * Version of the data set, in quotes, as "1.0.0".
   */
  product_version?: string;
  /**
   * Where the data come from; without it, the institution of the creator.
   */
  institution?: string;
  institution_ror?: Ror;
  /**
   * Scientific project.
   */
  project?: string;
  /**
   * Larger programme that the project belongs to.
   */
  program?: string;
  /**
   * How the data were made, in a phrase; without it, one made from kind of cast and instrument.
   */
  source?: string;
  /**
   * Anything else a reader should know.
   */
  comment?: string;
  /**
   * Who paid or helped; none if nobody is to be thanked.
   */
  acknowledgement?: string;
  /**
   * SPDX identifier of the licence, as CC-BY-4.0, or its address, or a sentence.
   */
  license?: string;
  access?: Access;
  /**
   * Who paid, with the number of the grant.
   */
  funding?: Funding[];
  /**
   * Names of the places, as harbour, river or county, by which people look for the data.
   */
  places?: Text[];
  /**
   * Note on tide and datum: state of the tide, where a gauge stands, to what depths refer.
   */
  water_level?: string;
  /**
   * How the casts were made: way of lowering, soak, speed, what was done on board.
   */
  methods?: string;
  /**
   * Statement on the quality of the data: what they are good for, what is doubtful.
   */
  quality?: string;
  /**
   * Publications and data sets that belong to these data, each with its address and how it is related.
   */
  related?: Relation[];
  /**
   * Publications on these data or their methods, DOI first. The equations used are added by the program.
   */
  references?: Text[];
  /**
   * Where a fuller description of the data set stands.
   */
  metadata_link?: string;
  /**
   * Name of the sea, bay or estuary.
   */
  sea_name?: string;
  /**
   * When the data set was handed out; without it, `created`.
   */
  date_issued?: {
    [k: string]: unknown;
  } & string;
  /**
   * When the data last changed; without it, `created`.
   */
  date_modified?: {
    [k: string]: unknown;
  } & string;
}
/**
 * Who may have the data, and from when.
 */
export interface Access {
  /**
   * open to all; embargoed, open to all from a day on; restricted to whom you allow it; or only the description is open.
   */
  right: "open" | "embargoed" | "restricted" | "metadata only";
  /**
   * First day on which embargoed data are open, as 2027-01-01.
   */
  embargo_end?: string;
  /**
   * Under which conditions, and whom to ask.
   */
  conditions?: string;
}
export interface Funding {
  /**
   * Who paid.
   */
  funder: string;
  /**
   * ROR of the institution, as https://ror.org/03yrm5c26.
   */
  funder_ror?: string;
  /**
   * Number of the grant, in quotes.
   */
  award_number?: string;
  /**
   * Title of the grant.
   */
  award_title?: string;
  /**
   * Address of the grant.
   */
  award_url?: string;
}
export interface Relation {
  /**
   * How this data set stands to it: this data set is described by it, and so on.
   */
  relation:
    | "described by"
    | "supplement to"
    | "cited by"
    | "cites"
    | "continues"
    | "part of"
    | "new version of"
    | "derived from";
  /**
   * Its address, DOI first.
   */
  identifier: string;
  /**
   * Its title.
   */
  title?: string;
}
/**
 * Who made the data, who hands them out, who helped.
 */
export interface People {
  creator?: Party;
  publisher?: Party1;
  /**
   * Others who took part, each with a role.
   */
  contributors?: Contributor[];
}
/**
 * Who made the data and answers questions on them.
 */
export interface Party {
  /**
   * Name of the person, group, institution or position.
   */
  name: string;
  /**
   * What the name names; person if not given.
   */
  type?: "person" | "group" | "institution" | "position";
  /**
   * Where the party belongs.
   */
  institution?: string;
  orcid?: Orcid;
  ror?: Ror;
  /**
   * True if this person agreed to be named in the data set. Asked of persons only.
   */
  consent?: boolean;
  email?: Email;
  url?: Url;
}
/**
 * Who hands the data out; for a deposit often the archive or your data desk.
 */
export interface Party1 {
  /**
   * Name of the person, group, institution or position.
   */
  name: string;
  /**
   * What the name names; person if not given.
   */
  type?: "person" | "group" | "institution" | "position";
  /**
   * Where the party belongs.
   */
  institution?: string;
  orcid?: Orcid;
  ror?: Ror;
  /**
   * True if this person agreed to be named in the data set. Asked of persons only.
   */
  consent?: boolean;
  email?: Email;
  url?: Url;
}
export interface Contributor {
  /**
   * Name of the person, group, institution or position, written without a comma: products list contributors between commas.
   */
  name: string;
  /**
   * What they did, as data manager; without a comma.
   */
  role: string;
  /**
   * What the name names.
   */
  type?: "person" | "group" | "institution" | "position";
  /**
   * Where they belong.
   */
  institution?: string;
  orcid?: Orcid;
  ror?: Ror;
  /**
   * True if this person agreed to be named in the data set. Asked of persons only.
   */
  consent?: boolean;
  email?: Email;
  url?: Url;
}
export interface Platform {
  /**
   * Short name without blanks, by which casts of this sheet refer to it.
   */
  id?: string;
  /**
   * What it is, as open survey boat of five metres.
   */
  name: string;
  /**
   * Radio call sign, if it has one.
   */
  call_sign?: string;
  /**
   * Code of the platform in a vocabulary, if it has one.
   */
  code?: string;
  /**
   * Vocabulary that code or name come from.
   */
  vocabulary?: string;
  /**
   * Anything else.
   */
  comment?: string;
}
export interface Instrument {
  /**
   * Short name without blanks, by which casts of this sheet refer to it.
   */
  id?: string;
  /**
   * What kind of instrument it is, as conductivity temperature pressure profiler.
   */
  name: string;
  /**
   * Maker and model, as printed on it.
   */
  model?: string;
  /**
   * Serial number, in quotes.
   */
  serial_number?: string;
  /**
   * Date of the calibration that was in force, as 2024-02-11.
   */
  calibration_date?: string;
  /**
   * Largest pressure it is made for, dbar.
   */
  rated_pressure?: number;
  /**
   * Largest depth it is made for, m; used where no rated pressure is given.
   */
  rated_depth?: number;
  /**
   * Vocabulary that the name comes from.
   */
  vocabulary?: string;
  /**
   * An absolute address, as https://estuary.example.org or doi:10.1000/182.
   */
  identifier?: string;
  /**
   * Readings of its clock beside the true time. One is an offset; between two the correction goes linearly in time.
   */
  clock?: ClockReading[];
  /**
   * What the maker or the calibration says of each sensor.
   */
  sensors?: {
    temperature?: Sensor;
    conductivity?: Sensor;
    pressure?: Sensor;
    depth?: Sensor;
    salinity?: Sensor;
    sound_speed?: Sensor;
  };
  /**
   * Anything else.
   */
  comment?: string;
}
export interface ClockReading {
  /**
   * What its clock showed, in UTC.
   */
  instrument: string;
  /**
   * The true time at that moment, in UTC.
   */
  true: string;
}
export interface Sensor {
  /**
   * Accuracy as the maker states it, in `units`.
   */
  accuracy?: number;
  /**
   * Smallest step it resolves, in `units`.
   */
  precision?: number;
  /**
   * Standard uncertainty (one standard deviation) of a single value, in `units`. Given only if you know it; it is then written beside the data, and given for conductivity, temperature and pressure also beside salinity, density, sound speed and depth, propagated (depth needs that of pressure only).
   */
  uncertainty?: number;
  /**
   * Unit of its numbers, in UDUNITS spelling, as degree_C, mS cm-1, dbar.
   */
  units: string;
  /**
   * Serial number of the sensor, in quotes.
   */
  serial_number?: string;
  /**
   * Date of its calibration.
   */
  calibration_date?: string;
  /**
   * Time in which it follows 63 % of a sudden change, s. Temperature and conductivity are matched by it, and rows count as settled after it.
   */
  response_time?: number;
  /**
   * Time by which its readings come late beside that, s.
   */
  delay?: number;
  cell_inertia?: CellInertia;
  /**
   * Calibrations. Slope and offset are a correction that the readings do not contain yet; between two of them it goes linearly in time, and half of what it changed by enters the uncertainty.
   */
  calibrations?: Calibration[];
}
/**
 * Heat that the wall of this conductivity cell keeps, if you know the numbers of the cell.
 */
export interface CellInertia {
  /**
   * Initial size of the error, as a part of the change of temperature.
   */
  size: number;
  /**
   * Time in which the error decays, s.
   */
  relaxation_time: number;
}
export interface Calibration {
  date: Date;
  /**
   * Where it was done.
   */
  kind?: "laboratory" | "field check" | "manufacturer";
  /**
   * The reading times this, plus offset, is the true value; 1 if not given.
   */
  slope?: number;
  /**
   * Added to the reading after slope, in `units` of the sensor; 0 if not given.
   */
  offset?: number;
  /**
   * True if made after the sensor was cleaned or repaired: it then says nothing about earlier casts.
   */
  after_cleaning?: boolean;
  /**
   * Number of its certificate, in quotes.
   */
  certificate?: string;
  /**
   * Who calibrated.
   */
  laboratory?: string;
  /**
   * Coefficients that the instrument computes with, by their names on the certificate. Kept with the data, not applied: the readings contain them already.
   */
  coefficients?: {
    [k: string]: number;
  };
  /**
   * Where it is written down.
   */
  document?: string;
}
/**
 * Choices on processing. What is left out is decided by rule and recorded.
 */
export interface ProcessingChoices {
  /**
   * Kind of water: which limits the quality tests use. estuary if not given.
   */
  preset?: "estuary" | "shelf" | "ocean" | "fresh";
  /**
   * Thickness of the layers that are averaged, m (dbar if by pressure); auto takes the smallest of 0.25, 0.5, 1 and 2 with a median of at least 3 rows.
   */
  bin_width?: "auto" | number;
  /**
   * What the layers are counted in; depth if not given.
   */
  bin_coordinate?: "depth" | "pressure";
  /**
   * Which way of the cast is averaged; down if not given.
   */
  direction?: "down" | "up";
  /**
   * Why the upcast is averaged, as: a bubble in the cell on the way down. It is told with the layers.
   */
  direction_reason?: string;
  /**
   * What is subtracted from the pressure of a cast without a reading in air: nothing (if not given), or the median of the casts of the same instrument on the same day.
   */
  offset_without_air?: "none" | "borrowed";
  /**
   * True to shift temperature by the delay behind conductivity that a cast itself shows, where that is sure.
   */
  delay_from_data?: boolean;
  /**
   * Length of a running mean over temperature and conductivity, s; none if not given.
   */
  smoothing?: number;
  salinity_offset?: SalinityOffsetByName;
  /**
   * Any other parameter of processing and of the quality tests, in the form of a recipe document; see docs/reference/recipe.md. What stands above goes before it.
   */
  recipe?: {};
}
/**
 * For legacy data that hold salinity alone: what is added to it, and where that comes from.
 */
export interface SalinityOffsetByName {
  /**
   * Added to Practical Salinity.
   */
  value: number;
  /**
   * Where it comes from.
   */
  from: string;
}
/**
 * What only WHP-Exchange files (--products whp) name.
 */
export interface ExchangeFiles {
  /**
   * Cruise code: code of the platform and first day, as 99ZZ20250513.
   */
  expocode: string;
  /**
   * Name of the section, if the stations lie on one.
   */
  section?: string;
  /**
   * Letters of division, institution and person that follow the date of writing in the first line.
   */
  stamp?: string;
}
/**
 * An answer to one question.
 */
export interface Answer {
  /**
   * What the question is about, as timeZone.
   */
  about: string;
  /**
   * "*" for all files, the name of a file, or "<file name>#<cast id>".
   */
  where: string;
  /**
   * The answer.
   */
  value: string | number | boolean;
}
export interface ListedCast {
  /**
   * Name of the cast for good, unique in the survey, in letters, digits, points, underscores and hyphens.
   */
  id: string;
  /**
   * Name of the source file, without folders.
   */
  file: string;
  /**
   * Which cast of the file it is, counted from 1, where a file holds several.
   */
  number?: number;
  /**
   * SHA-256 of the source file, by which it is known again under another name.
   */
  sha256?: string;
  /**
   * Name of the place, where the file does not tell it.
   */
  station?: string;
  /**
   * Latitude of the start, decimal degrees north; goes before what the file says.
   */
  latitude?: number;
  /**
   * Longitude of the start, decimal degrees east; goes before what the file says.
   */
  longitude?: number;
  /**
   * Id of the platform, if not the first.
   */
  platform?: string;
  /**
   * Id of the instrument.
   */
  instrument?: string;
  processing?: ProcessingChoicesOfACast;
  /**
   * Depth of the bottom at the cast by sounding, m below the surface.
   */
  sounding?: number;
  /**
   * Wind as the field log has it.
   */
  wind?: string;
  /**
   * State of the sea as the field log has it.
   */
  sea?: string;
  /**
   * Who lowered the instrument. Written into products only with the consent of the people named.
   */
  observer?: string;
  /**
   * Remarks of the field log.
   */
  notes?: string;
}
/**
 * What is done otherwise with this cast than with the others.
 */
export interface ProcessingChoicesOfACast {
  /**
   * Kind of water: which limits the quality tests use.
   */
  preset?: "estuary" | "shelf" | "ocean" | "fresh";
  /**
   * What is subtracted from the pressure where the cast has no reading in air.
   */
  offset_without_air?: "none" | "borrowed";
  /**
   * True to shift temperature by the delay that the cast itself shows.
   */
  delay_from_data?: boolean;
  /**
   * Length of a running mean over temperature and conductivity, s.
   */
  smoothing?: number;
}
