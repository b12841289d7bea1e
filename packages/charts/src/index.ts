export { type CastPictureOptions, castPicture } from "./cast-picture.ts";
export { brokenAxisAt } from "./depth-axis.ts";
export { extentOf } from "./extent.ts";
export type { Shoreline } from "./land.ts";
export { type MapCast, type MapOptions, mapPicture, type SurveyMap } from "./map-picture.ts";
export { type Levels, type OverlayOptions, overlayPicture } from "./overlay-picture.ts";
export { type PictureOptions, profilePicture } from "./profile-picture.ts";
export { axisTitle, printedUnits, quantityName } from "./quantity-words.ts";
export { type SectionOptions, type SectionStation, sectionPicture } from "./section-picture.ts";
export { type SeriesOptions, seriesPicture } from "./series-picture.ts";
export { escapeText } from "./svg.ts";
export {
  temperatureSalinityPicture,
  type WaterOfCast,
  type WaterOptions,
} from "./temperature-salinity-picture.ts";
