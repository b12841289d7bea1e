import { cfClause, defineRule } from "../../engine/rule.ts";

const SMALL = ["byte", "ubyte", "short", "ushort"];
const OLD = ["byte", "char", "short", "int"];

const packed = (type: string, attributes: string) => `variables: ${type} t ; ${attributes}`;
const where = { variable: "t", attribute: "scale_factor" };

export const packingTypes = defineRule({
  id: "cf/packing-types",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("8.1"),
  covers: ["CF-8.1-R1", "CF-8.1-R2", "CF-8.1-R3", "CF-OLD-5"],
  title: "Packed values are small whole numbers, their factor and offset float or double of one type",
  why: "The type of factor and offset is the type of the unpacked values; a wrong one loses digits.",
  remedy: "Store scale_factor and add_offset of {variable} as float (for byte and short) or double.",
  messages: {
    differ: "scale_factor and add_offset of {variable} have different types: {found}",
    type: "{attribute} of {variable} has the type {found} instead of float or double",
    variable: "{variable} of type {found} cannot be packed by a {attribute} of type {packing}",
  },
  passing: [
    packed("short", "t:scale_factor = 0.1f ; t:add_offset = 5.f ;"),
    packed("int", "t:scale_factor = 0.1 ;"),
    { cdl: packed("int", "t:scale_factor = 2 ;"), edition: "1.10" },
  ],
  failing: [
    { cdl: packed("short", "t:scale_factor = 0.1f ; t:add_offset = 5. ;"), where, message: "differ" },
    { cdl: packed("int", "t:scale_factor = 2 ;"), where, message: "type" },
    { cdl: packed("int", "t:scale_factor = 0.1f ;"), where, message: "variable" },
    {
      cdl: packed("int", "t:scale_factor = 0.1f ;"),
      edition: "1.10",
      where,
      message: "variable",
      level: "warning",
    },
    { cdl: packed("float", "t:scale_factor = 0.1 ;"), edition: "1.6", where, message: "variable" },
  ],
  check(dataset, report) {
    const strict = dataset.since("1.11");
    for (const { name, type, attributes } of dataset.all) {
      const given = ["scale_factor", "add_offset"].flatMap((attribute) => attributes.get(attribute) ?? []);
      const [first, second] = given;
      if (first === undefined) continue;
      const place = { variable: name, attribute: first.name };
      const packing = first.type;
      if (second !== undefined && second.type !== packing) {
        report(place, "differ", { found: [packing, second.type] });
        continue;
      }
      if (packing === type && !strict) continue;
      const isFloat = packing === "float";
      if (!isFloat && packing !== "double")
        report(place, "type", { found: packing, expected: "float or double" });
      else if (strict ? !(isFloat ? SMALL : [...SMALL, "int", "uint"]).includes(type) : !OLD.includes(type))
        report(place, "variable", { found: type, fill: { packing } });
      else if (!strict && isFloat && type === "int")
        report(place, "variable", { found: type, fill: { packing }, level: "warning" });
    }
  },
});
