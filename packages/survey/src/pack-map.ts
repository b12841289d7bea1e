import type { DataSetFacts } from "@wherry/converter";
import type { Position } from "@wherry/core";

/** The map of a package: where the casts are; nothing if none has a position. */
export async function mapFile({ sheet, casts }: DataSetFacts): Promise<{ path: string; text: string }[]> {
  // loaded only here: the drawing brings the shores of the world with it
  const { mapPicture } = await import("@wherry/charts");
  const fix = (latitude: number, longitude: number): Position | null =>
    Number.isNaN(latitude + longitude) ? null : { latitude, longitude, satellites: null, quality: null };
  const { id, title = id } = sheet.survey;
  const map = mapPicture(
    casts.map((cast) => ({
      label: cast.id,
      kind: cast.kind === "profile" ? "profile" : "fixed-depth",
      start: fix(cast.latitude, cast.longitude),
      end: fix(cast.endLatitude, cast.endLongitude),
    })),
    {
      scope: "map",
      title: `Positions of ${title}`,
      description: `Start fixes of ${casts.length} casts, in the order of time. Not for navigation.`,
    },
  );
  return map === null ? [] : [{ path: `${id}_map.svg`, text: map.svg }];
}
