import type { Rule } from "../../engine/rule.ts";
import { actualRange } from "./actual-range.ts";
import { ancillaryExist } from "./ancillary-exist.ts";
import { attributePlace } from "./attribute-place.ts";
import { attributeType } from "./attribute-type.ts";
import { axisOnce } from "./axis-once.ts";
import { axisPlace } from "./axis-place.ts";
import { axisValue } from "./axis-value.ts";
import { boundsAttributes } from "./bounds-attributes.ts";
import { boundsFit } from "./bounds-fit.ts";
import { boundsValues } from "./bounds-values.ts";
import { calendarKnown } from "./calendar-known.ts";
import { calendarPlace } from "./calendar-place.ts";
import { calendarPresent } from "./calendar-present.ts";
import { calendarReform } from "./calendar-reform.ts";
import { cellMethods } from "./cell-methods.ts";
import { cellMethodsBounds } from "./cell-methods-bounds.ts";
import { cellMethodsComplete } from "./cell-methods-complete.ts";
import { cfRole } from "./cf-role.ts";
import { conventions } from "./conventions.ts";
import { conventionsAlone } from "./conventions-alone.ts";
import { conventionsEdition } from "./conventions-edition.ts";
import { coordinateFill } from "./coordinate-fill.ts";
import { coordinateMonotonic } from "./coordinate-monotonic.ts";
import { coordinateName } from "./coordinate-name.ts";
import { coordinatesExist } from "./coordinates-exist.ts";
import { coordinatesFit } from "./coordinates-fit.ts";
import { countVariable } from "./count-variable.ts";
import { crsWkt } from "./crs-wkt.ts";
import { dataCoordinates } from "./data-coordinates.ts";
import { dataTypesOld } from "./data-types-old.ts";
import { descriptionText } from "./description-text.ts";
import { differenceMetadata } from "./difference-metadata.ts";
import { dimensionCoordinate } from "./dimension-coordinate.ts";
import { dimensionOnce } from "./dimension-once.ts";
import { dimensionOrder } from "./dimension-order.ts";
import { featureCoordinates } from "./feature-coordinates.ts";
import { featureIds } from "./feature-ids.ts";
import { featureTimes } from "./feature-times.ts";
import { featureType } from "./feature-type.ts";
import { fileName } from "./file-name.ts";
import { fillOutsideValid } from "./fill-outside-valid.ts";
import { fillValueType } from "./fill-value-type.ts";
import { flagMeanings } from "./flag-meanings.ts";
import { flagName } from "./flag-name.ts";
import { flagType } from "./flag-type.ts";
import { flagValuesDistinct } from "./flag-values-distinct.ts";
import { flagValuesMasked } from "./flag-values-masked.ts";
import { globalOnly } from "./global-only.ts";
import { gridMapping } from "./grid-mapping.ts";
import { gridMappingCoordinates } from "./grid-mapping-coordinates.ts";
import { gridMappingParts } from "./grid-mapping-parts.ts";
import { horizontalAxis } from "./horizontal-axis.ts";
import { incompletePadding } from "./incomplete-padding.ts";
import { indexVariable } from "./index-variable.ts";
import { labelName } from "./label-name.ts";
import { labelShape } from "./label-shape.ts";
import { latitudeUnits } from "./latitude-units.ts";
import { leapSecondOrigin } from "./leap-second-origin.ts";
import { leapSecondsPlace, leapSecondsPresent } from "./leap-seconds.ts";
import { listedWords } from "./listed-words.ts";
import { longName } from "./long-name.ts";
import { longitudeUnits } from "./longitude-units.ts";
import { missingIds } from "./missing-ids.ts";
import { missingPlaces } from "./missing-places.ts";
import { missingValueEqualsFill } from "./missing-value-equals-fill.ts";
import { missingValueType } from "./missing-value-type.ts";
import { modifierDeprecated } from "./modifier-deprecated.ts";
import { names } from "./names.ts";
import { namesDiffer } from "./names-differ.ts";
import { notExamined } from "./not-examined.ts";
import { oneString } from "./one-string.ts";
import { packingTypes } from "./packing-types.ts";
import { pointDimension } from "./point-dimension.ts";
import { positiveSense } from "./positive-sense.ts";
import { positiveValue } from "./positive-value.ts";
import { raggedLink } from "./ragged-link.ts";
import { samplingEdition } from "./sampling-edition.ts";
import { scalarName } from "./scalar-name.ts";
import { standardNameAlias } from "./standard-name-alias.ts";
import { standardNameForm } from "./standard-name-form.ts";
import { standardNameKnown } from "./standard-name-known.ts";
import { stringAttributeOld } from "./string-attribute-old.ts";
import { temperatureMetadata } from "./temperature-metadata.ts";
import { textEncoding } from "./text-encoding.ts";
import { timeOrigin } from "./time-origin.ts";
import { timeOriginForm } from "./time-origin-form.ts";
import { timeReference } from "./time-reference.ts";
import { timeSince } from "./time-since.ts";
import { timeUnit } from "./time-unit.ts";
import { timeValues } from "./time-values.ts";
import { timeZone } from "./time-zone.ts";
import { unitsCanonical } from "./units-canonical.ts";
import { unitsFactor } from "./units-factor.ts";
import { unitsLegacy } from "./units-legacy.ts";
import { unitsMetadata } from "./units-metadata.ts";
import { unitsPartsPer } from "./units-parts-per.ts";
import { unitsPresent } from "./units-present.ts";
import { unitsReadable } from "./units-readable.ts";
import { unlimitedFirst } from "./unlimited-first.ts";
import { validRangeOnce } from "./valid-range-once.ts";
import { verticalAxis } from "./vertical-axis.ts";
import { verticalPositive } from "./vertical-positive.ts";
import { verticalUnits } from "./vertical-units.ts";
import { yearZero } from "./year-zero.ts";

/** Rules of the CF Conventions, in the order in which they are run and listed. */
export const cfRules: readonly Rule[] = [
  actualRange,
  ancillaryExist,
  attributePlace,
  attributeType,
  axisOnce,
  axisPlace,
  axisValue,
  boundsAttributes,
  boundsFit,
  boundsValues,
  calendarKnown,
  calendarPlace,
  calendarPresent,
  calendarReform,
  cellMethods,
  cellMethodsBounds,
  cellMethodsComplete,
  cfRole,
  conventions,
  conventionsAlone,
  conventionsEdition,
  coordinateFill,
  coordinateMonotonic,
  coordinateName,
  coordinatesExist,
  coordinatesFit,
  countVariable,
  crsWkt,
  dataCoordinates,
  dataTypesOld,
  descriptionText,
  differenceMetadata,
  dimensionCoordinate,
  dimensionOnce,
  dimensionOrder,
  featureCoordinates,
  featureIds,
  featureTimes,
  featureType,
  fileName,
  fillOutsideValid,
  fillValueType,
  flagMeanings,
  flagName,
  flagType,
  flagValuesDistinct,
  flagValuesMasked,
  globalOnly,
  gridMapping,
  gridMappingCoordinates,
  gridMappingParts,
  horizontalAxis,
  incompletePadding,
  indexVariable,
  labelName,
  labelShape,
  latitudeUnits,
  leapSecondOrigin,
  leapSecondsPlace,
  leapSecondsPresent,
  listedWords,
  longName,
  longitudeUnits,
  missingIds,
  missingPlaces,
  missingValueEqualsFill,
  missingValueType,
  modifierDeprecated,
  names,
  namesDiffer,
  notExamined,
  oneString,
  packingTypes,
  pointDimension,
  positiveSense,
  positiveValue,
  raggedLink,
  samplingEdition,
  scalarName,
  standardNameAlias,
  standardNameForm,
  standardNameKnown,
  stringAttributeOld,
  temperatureMetadata,
  textEncoding,
  timeOrigin,
  timeOriginForm,
  timeReference,
  timeSince,
  timeUnit,
  timeValues,
  timeZone,
  unitsCanonical,
  unitsFactor,
  unitsLegacy,
  unitsMetadata,
  unitsPartsPer,
  unitsPresent,
  unitsReadable,
  unlimitedFirst,
  validRangeOnce,
  verticalAxis,
  verticalPositive,
  verticalUnits,
  yearZero,
];
