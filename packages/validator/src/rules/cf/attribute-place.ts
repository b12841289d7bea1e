import { cfClause, defineRule } from "../../engine/rule.ts";
import type { VariableView } from "../../engine/variable-view.ts";

/** Attributes that table A.1 gives to variables alone. */
const NEVER_GLOBAL: ReadonlySet<string> = new Set([
  ..."_FillValue actual_range add_offset ancillary_variables axis bounds calendar cell_measures cell_methods".split(
    " ",
  ),
  ..."cf_role compress coordinates flag_masks flag_meanings flag_values formula_terms grid_mapping".split(
    " ",
  ),
  ..."instance_dimension long_name missing_value positive sample_dimension scale_factor standard_name units".split(
    " ",
  ),
  ..."units_metadata valid_max valid_min valid_range".split(" "),
]);

/** Attributes that table A.1 gives to the file alone; title and history have a rule of their own. */
const ALWAYS_GLOBAL = ["featureType", "external_variables"];

/** Attributes of coordinates; axis and calendar have rules of their own. */
const OF_COORDINATES = ["bounds", "climatology", "cf_role", "positive", "formula_terms"];

/** Attributes of data. Auxiliary coordinates of casts are measured as well: there they are accepted. */
const OF_DATA = ["cell_methods", "coordinates", "flag_masks", "flag_meanings", "flag_values"];

const isData = ({ role, kindOfCoordinate }: VariableView): boolean =>
  role === "data" && kindOfCoordinate === null;

export const attributePlace = defineRule({
  id: "cf/attribute-place",
  status: "stable",
  since: "0.1.0",
  level: "advice",
  basis: "reading",
  citation: cfClause("Appendix A, table A.1"),
  covers: ["CF-A-T40"],
  title: "An attribute of CF stands where table A.1 gives it a meaning",
  why: "Elsewhere it is allowed but means nothing to a program, so what it should say is not said.",
  remedy: "Move {attribute} to where it belongs, or remove it.",
  messages: {
    file: "{attribute} is an attribute of variables and says nothing as a global one",
    variable: "{attribute} of {variable} is a global attribute and says nothing here",
    data: "{attribute} of {variable} is an attribute of coordinates; {variable} holds data",
    coordinate: "{attribute} of {variable} is an attribute of data; {variable} is a coordinate variable",
  },
  passing: [
    `:title = "any" ; variables: float t ; t:units = "K" ;`,
    `dimensions: c = 1 ; o = 2 ; variables: float z(c, o) ; z:positive = "down" ; z:ancillary_variables = "q" ;
     byte q(c, o) ; float t(c, o) ; t:coordinates = "z" ; t:cell_methods = "z: point" ;`,
  ],
  failing: [
    { cdl: `:units = "K" ;`, where: { attribute: "units" }, message: "file" },
    {
      cdl: `variables: float t ; t:featureType = "profile" ;`,
      where: { variable: "t", attribute: "featureType" },
      message: "variable",
    },
    {
      cdl: `variables: float t ; t:units = "K" ; t:bounds = "b" ;`,
      where: { variable: "t", attribute: "bounds" },
      message: "data",
    },
    {
      cdl: `dimensions: z = 1 ; variables: float z(z) ; z:units = "m" ; z:cell_methods = "z: point" ;`,
      where: { variable: "z", attribute: "cell_methods" },
      message: "coordinate",
    },
  ],
  check(dataset, report) {
    for (const attribute of dataset.attributes.keys())
      if (NEVER_GLOBAL.has(attribute)) report({ attribute }, "file");
    for (const variable of dataset.all) {
      const tell = (attributes: readonly string[], message: "variable" | "data" | "coordinate") => {
        for (const attribute of attributes)
          if (variable.has(attribute)) report({ variable: variable.name, attribute }, message);
      };
      tell(ALWAYS_GLOBAL, "variable");
      if (isData(variable)) tell(OF_COORDINATES, "data");
      if (variable.isCoordinate) tell(OF_DATA, "coordinate");
    }
  },
});
