/** The compiler of JSON Schemas, in a file of its own to be loaded when it is needed: most runs go without. */
export { Ajv2020 } from "ajv/dist/2020.js";
