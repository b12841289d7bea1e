// @ts-nocheck
// Schemas of the rule documents that ship, compiled. Made by tools/generate.ts; change the documents, not this file.
export const fits0 = validate20;
const schema31 = {"properties":{"attributes":{"required":["featureType"]},"variables":{"contains":{"properties":{"attributes":{"required":["standard_name"],"properties":{"standard_name":{"enum":["sea_water_electrical_conductivity","sea_water_practical_salinity","sea_water_salinity","sea_water_temperature"]}}}}}}}};

function validate20(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate20.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data0 = data.attributes;
const _errs0 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing0;
if((data0.featureType === undefined) && (missing0 = "featureType")){
validate20.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
}
var valid0 = _errs0 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.variables !== undefined){
let data1 = data.variables;
const _errs1 = errors;
if(Array.isArray(data1)){
const _errs2 = errors;
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
let data2 = data1[i0];
const _errs3 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
if(data2.attributes !== undefined){
let data3 = data2.attributes;
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
let missing1;
if((data3.standard_name === undefined) && (missing1 = "standard_name")){
const err0 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/properties/variables/contains/properties/attributes/required",keyword:"required",params:{missingProperty: missing1}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
else {
if(data3.standard_name !== undefined){
let data4 = data3.standard_name;
if(!((((data4 === "sea_water_electrical_conductivity") || (data4 === "sea_water_practical_salinity")) || (data4 === "sea_water_salinity")) || (data4 === "sea_water_temperature"))){
const err1 = {instancePath:instancePath+"/variables/" + i0+"/attributes/standard_name",schemaPath:"#/properties/variables/contains/properties/attributes/properties/standard_name/enum",keyword:"enum",params:{allowedValues: schema31.properties.variables.contains.properties.attributes.properties.standard_name.enum}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
}
}
}
}
var valid1 = _errs3 === errors;
if(valid1){
break;
}
}
if(!valid1){
validate20.errors = [{instancePath:instancePath+"/variables",schemaPath:"#/properties/variables/contains",keyword:"contains",params:{minContains: 1}}];
return false;
}
else {
errors = _errs2;
if(vErrors !== null){
if(_errs2){
vErrors.length = _errs2;
}
else {
vErrors = null;
}
}
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
}
}
validate20.errors = vErrors;
return errors === 0;
}
validate20.evaluated = {"props":{"attributes":true,"variables":true},"dynamicProps":false,"dynamicItems":false};

export const fits1 = validate21;
const schema32 = {"anyOf":[{"properties":{"variables":{"contains":{"properties":{"attributes":{"anyOf":[{"required":["make_model"]},{"required":["instrument_make_model"]}]}}}}}},{"properties":{"attributes":{"anyOf":[{"required":["instrument_make_model"]},{"required":["instrument_model"]}]}}}]};

function validate21(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate21.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
const _errs0 = errors;
let valid0 = false;
const _errs1 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.variables !== undefined){
let data0 = data.variables;
if(Array.isArray(data0)){
const _errs3 = errors;
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
let data1 = data0[i0];
const _errs4 = errors;
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
if(data1.attributes !== undefined){
let data2 = data1.attributes;
const _errs6 = errors;
let valid4 = false;
const _errs7 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing0;
if((data2.make_model === undefined) && (missing0 = "make_model")){
const err0 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/0/properties/variables/contains/properties/attributes/anyOf/0/required",keyword:"required",params:{missingProperty: missing0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
var _valid1 = _errs7 === errors;
valid4 = valid4 || _valid1;
const _errs8 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing1;
if((data2.instrument_make_model === undefined) && (missing1 = "instrument_make_model")){
const err1 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/0/properties/variables/contains/properties/attributes/anyOf/1/required",keyword:"required",params:{missingProperty: missing1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
var _valid1 = _errs8 === errors;
valid4 = valid4 || _valid1;
if(!valid4){
const err2 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/0/properties/variables/contains/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
else {
errors = _errs6;
if(vErrors !== null){
if(_errs6){
vErrors.length = _errs6;
}
else {
vErrors = null;
}
}
}
}
}
var valid2 = _errs4 === errors;
if(valid2){
break;
}
}
if(!valid2){
const err3 = {instancePath:instancePath+"/variables",schemaPath:"#/anyOf/0/properties/variables/contains",keyword:"contains",params:{minContains: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
else {
errors = _errs3;
if(vErrors !== null){
if(_errs3){
vErrors.length = _errs3;
}
else {
vErrors = null;
}
}
}
}
}
}
var _valid0 = _errs1 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
var props0 = {};
props0.variables = true;
}
const _errs9 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data3 = data.attributes;
const _errs11 = errors;
let valid6 = false;
const _errs12 = errors;
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
let missing2;
if((data3.instrument_make_model === undefined) && (missing2 = "instrument_make_model")){
const err4 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/1/properties/attributes/anyOf/0/required",keyword:"required",params:{missingProperty: missing2}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
var _valid2 = _errs12 === errors;
valid6 = valid6 || _valid2;
const _errs13 = errors;
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
let missing3;
if((data3.instrument_model === undefined) && (missing3 = "instrument_model")){
const err5 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/1/properties/attributes/anyOf/1/required",keyword:"required",params:{missingProperty: missing3}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
var _valid2 = _errs13 === errors;
valid6 = valid6 || _valid2;
if(!valid6){
const err6 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/1/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
else {
errors = _errs11;
if(vErrors !== null){
if(_errs11){
vErrors.length = _errs11;
}
else {
vErrors = null;
}
}
}
}
}
var _valid0 = _errs9 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
if(props0 !== true){
props0 = props0 || {};
props0.attributes = true;
}
}
if(!valid0){
const err7 = {instancePath,schemaPath:"#/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
validate21.errors = vErrors;
return false;
}
else {
errors = _errs0;
if(vErrors !== null){
if(_errs0){
vErrors.length = _errs0;
}
else {
vErrors = null;
}
}
}
validate21.errors = vErrors;
evaluated0.props = props0;
return errors === 0;
}
validate21.evaluated = {"dynamicProps":true,"dynamicItems":false};

export const fits2 = validate22;
const schema33 = {"anyOf":[{"properties":{"variables":{"contains":{"properties":{"attributes":{"anyOf":[{"required":["serial_number"]},{"required":["instrument_serial_number"]}]}}}}}},{"properties":{"attributes":{"required":["instrument_serial_number"]}}}]};

function validate22(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate22.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
const _errs0 = errors;
let valid0 = false;
const _errs1 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.variables !== undefined){
let data0 = data.variables;
if(Array.isArray(data0)){
const _errs3 = errors;
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
let data1 = data0[i0];
const _errs4 = errors;
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
if(data1.attributes !== undefined){
let data2 = data1.attributes;
const _errs6 = errors;
let valid4 = false;
const _errs7 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing0;
if((data2.serial_number === undefined) && (missing0 = "serial_number")){
const err0 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/0/properties/variables/contains/properties/attributes/anyOf/0/required",keyword:"required",params:{missingProperty: missing0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
var _valid1 = _errs7 === errors;
valid4 = valid4 || _valid1;
const _errs8 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing1;
if((data2.instrument_serial_number === undefined) && (missing1 = "instrument_serial_number")){
const err1 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/0/properties/variables/contains/properties/attributes/anyOf/1/required",keyword:"required",params:{missingProperty: missing1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
var _valid1 = _errs8 === errors;
valid4 = valid4 || _valid1;
if(!valid4){
const err2 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/0/properties/variables/contains/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
else {
errors = _errs6;
if(vErrors !== null){
if(_errs6){
vErrors.length = _errs6;
}
else {
vErrors = null;
}
}
}
}
}
var valid2 = _errs4 === errors;
if(valid2){
break;
}
}
if(!valid2){
const err3 = {instancePath:instancePath+"/variables",schemaPath:"#/anyOf/0/properties/variables/contains",keyword:"contains",params:{minContains: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
else {
errors = _errs3;
if(vErrors !== null){
if(_errs3){
vErrors.length = _errs3;
}
else {
vErrors = null;
}
}
}
}
}
}
var _valid0 = _errs1 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
var props0 = {};
props0.variables = true;
}
const _errs9 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data3 = data.attributes;
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
let missing2;
if((data3.instrument_serial_number === undefined) && (missing2 = "instrument_serial_number")){
const err4 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/1/properties/attributes/required",keyword:"required",params:{missingProperty: missing2}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
}
var _valid0 = _errs9 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
if(props0 !== true){
props0 = props0 || {};
props0.attributes = true;
}
}
if(!valid0){
const err5 = {instancePath,schemaPath:"#/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
validate22.errors = vErrors;
return false;
}
else {
errors = _errs0;
if(vErrors !== null){
if(_errs0){
vErrors.length = _errs0;
}
else {
vErrors = null;
}
}
}
validate22.errors = vErrors;
evaluated0.props = props0;
return errors === 0;
}
validate22.evaluated = {"dynamicProps":true,"dynamicItems":false};

export const fits3 = validate23;
const schema34 = {"anyOf":[{"properties":{"variables":{"contains":{"properties":{"attributes":{"anyOf":[{"required":["calibration_date"]},{"required":["calibration"]}]}}}}}},{"properties":{"attributes":{"anyOf":[{"required":["calibration_date"]},{"required":["instrument_calibration_date"]}]}}}]};

function validate23(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate23.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
const _errs0 = errors;
let valid0 = false;
const _errs1 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.variables !== undefined){
let data0 = data.variables;
if(Array.isArray(data0)){
const _errs3 = errors;
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
let data1 = data0[i0];
const _errs4 = errors;
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
if(data1.attributes !== undefined){
let data2 = data1.attributes;
const _errs6 = errors;
let valid4 = false;
const _errs7 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing0;
if((data2.calibration_date === undefined) && (missing0 = "calibration_date")){
const err0 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/0/properties/variables/contains/properties/attributes/anyOf/0/required",keyword:"required",params:{missingProperty: missing0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
var _valid1 = _errs7 === errors;
valid4 = valid4 || _valid1;
const _errs8 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing1;
if((data2.calibration === undefined) && (missing1 = "calibration")){
const err1 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/0/properties/variables/contains/properties/attributes/anyOf/1/required",keyword:"required",params:{missingProperty: missing1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
var _valid1 = _errs8 === errors;
valid4 = valid4 || _valid1;
if(!valid4){
const err2 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/0/properties/variables/contains/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
else {
errors = _errs6;
if(vErrors !== null){
if(_errs6){
vErrors.length = _errs6;
}
else {
vErrors = null;
}
}
}
}
}
var valid2 = _errs4 === errors;
if(valid2){
break;
}
}
if(!valid2){
const err3 = {instancePath:instancePath+"/variables",schemaPath:"#/anyOf/0/properties/variables/contains",keyword:"contains",params:{minContains: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
else {
errors = _errs3;
if(vErrors !== null){
if(_errs3){
vErrors.length = _errs3;
}
else {
vErrors = null;
}
}
}
}
}
}
var _valid0 = _errs1 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
var props0 = {};
props0.variables = true;
}
const _errs9 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data3 = data.attributes;
const _errs11 = errors;
let valid6 = false;
const _errs12 = errors;
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
let missing2;
if((data3.calibration_date === undefined) && (missing2 = "calibration_date")){
const err4 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/1/properties/attributes/anyOf/0/required",keyword:"required",params:{missingProperty: missing2}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
var _valid2 = _errs12 === errors;
valid6 = valid6 || _valid2;
const _errs13 = errors;
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
let missing3;
if((data3.instrument_calibration_date === undefined) && (missing3 = "instrument_calibration_date")){
const err5 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/1/properties/attributes/anyOf/1/required",keyword:"required",params:{missingProperty: missing3}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
var _valid2 = _errs13 === errors;
valid6 = valid6 || _valid2;
if(!valid6){
const err6 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/1/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
else {
errors = _errs11;
if(vErrors !== null){
if(_errs11){
vErrors.length = _errs11;
}
else {
vErrors = null;
}
}
}
}
}
var _valid0 = _errs9 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
if(props0 !== true){
props0 = props0 || {};
props0.attributes = true;
}
}
if(!valid0){
const err7 = {instancePath,schemaPath:"#/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
validate23.errors = vErrors;
return false;
}
else {
errors = _errs0;
if(vErrors !== null){
if(_errs0){
vErrors.length = _errs0;
}
else {
vErrors = null;
}
}
}
validate23.errors = vErrors;
evaluated0.props = props0;
return errors === 0;
}
validate23.evaluated = {"dynamicProps":true,"dynamicItems":false};

export const fits4 = validate24;
const schema35 = {"properties":{"variables":{"contains":{"anyOf":[{"properties":{"attributes":{"anyOf":[{"required":["accuracy"]},{"required":["uncertainty"]}]}}},{"properties":{"name":{"pattern":"uncertainty"}}},{"properties":{"attributes":{"required":["standard_name"],"properties":{"standard_name":{"pattern":" standard_error$"}}}}}]}}}};
const pattern4 = new RegExp("uncertainty", "u");
const pattern5 = new RegExp(" standard_error$", "u");

function validate24(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate24.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.variables !== undefined){
let data0 = data.variables;
if(Array.isArray(data0)){
const _errs1 = errors;
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
let data1 = data0[i0];
const _errs2 = errors;
const _errs3 = errors;
let valid2 = false;
const _errs4 = errors;
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
if(data1.attributes !== undefined){
let data2 = data1.attributes;
const _errs6 = errors;
let valid4 = false;
const _errs7 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing0;
if((data2.accuracy === undefined) && (missing0 = "accuracy")){
const err0 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/properties/variables/contains/anyOf/0/properties/attributes/anyOf/0/required",keyword:"required",params:{missingProperty: missing0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
var _valid1 = _errs7 === errors;
valid4 = valid4 || _valid1;
const _errs8 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing1;
if((data2.uncertainty === undefined) && (missing1 = "uncertainty")){
const err1 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/properties/variables/contains/anyOf/0/properties/attributes/anyOf/1/required",keyword:"required",params:{missingProperty: missing1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
var _valid1 = _errs8 === errors;
valid4 = valid4 || _valid1;
if(!valid4){
const err2 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/properties/variables/contains/anyOf/0/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
else {
errors = _errs6;
if(vErrors !== null){
if(_errs6){
vErrors.length = _errs6;
}
else {
vErrors = null;
}
}
}
}
}
var _valid0 = _errs4 === errors;
valid2 = valid2 || _valid0;
if(_valid0){
var props0 = {};
props0.attributes = true;
}
const _errs9 = errors;
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
if(data1.name !== undefined){
let data3 = data1.name;
if(typeof data3 === "string"){
if(!pattern4.test(data3)){
const err3 = {instancePath:instancePath+"/variables/" + i0+"/name",schemaPath:"#/properties/variables/contains/anyOf/1/properties/name/pattern",keyword:"pattern",params:{pattern: "uncertainty"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
}
var _valid0 = _errs9 === errors;
valid2 = valid2 || _valid0;
if(_valid0){
if(props0 !== true){
props0 = props0 || {};
props0.name = true;
}
}
const _errs11 = errors;
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
if(data1.attributes !== undefined){
let data4 = data1.attributes;
if(data4 && typeof data4 == "object" && !Array.isArray(data4)){
let missing2;
if((data4.standard_name === undefined) && (missing2 = "standard_name")){
const err4 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/properties/variables/contains/anyOf/2/properties/attributes/required",keyword:"required",params:{missingProperty: missing2}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
else {
if(data4.standard_name !== undefined){
let data5 = data4.standard_name;
if(typeof data5 === "string"){
if(!pattern5.test(data5)){
const err5 = {instancePath:instancePath+"/variables/" + i0+"/attributes/standard_name",schemaPath:"#/properties/variables/contains/anyOf/2/properties/attributes/properties/standard_name/pattern",keyword:"pattern",params:{pattern: " standard_error$"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
}
}
}
}
var _valid0 = _errs11 === errors;
valid2 = valid2 || _valid0;
if(_valid0){
if(props0 !== true){
props0 = props0 || {};
props0.attributes = true;
}
}
if(!valid2){
const err6 = {instancePath:instancePath+"/variables/" + i0,schemaPath:"#/properties/variables/contains/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
else {
errors = _errs3;
if(vErrors !== null){
if(_errs3){
vErrors.length = _errs3;
}
else {
vErrors = null;
}
}
}
var valid1 = _errs2 === errors;
if(valid1){
break;
}
}
if(!valid1){
validate24.errors = [{instancePath:instancePath+"/variables",schemaPath:"#/properties/variables/contains",keyword:"contains",params:{minContains: 1}}];
return false;
}
else {
errors = _errs1;
if(vErrors !== null){
if(_errs1){
vErrors.length = _errs1;
}
else {
vErrors = null;
}
}
}
}
}
}
validate24.errors = vErrors;
return errors === 0;
}
validate24.evaluated = {"props":{"variables":true},"dynamicProps":false,"dynamicItems":false};

export const fits5 = validate25;
const schema36 = {"anyOf":[{"properties":{"attributes":{"anyOf":[{"required":["platform"]},{"required":["platform_name"]}]}}},{"properties":{"variables":{"contains":{"properties":{"attributes":{"anyOf":[{"required":["platform"]},{"properties":{"standard_name":{"enum":["platform_name","platform_id"]}},"required":["standard_name"]}]}}}}}}]};

function validate25(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate25.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
const _errs0 = errors;
let valid0 = false;
const _errs1 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data0 = data.attributes;
const _errs3 = errors;
let valid2 = false;
const _errs4 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing0;
if((data0.platform === undefined) && (missing0 = "platform")){
const err0 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/0/properties/attributes/anyOf/0/required",keyword:"required",params:{missingProperty: missing0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
var _valid1 = _errs4 === errors;
valid2 = valid2 || _valid1;
const _errs5 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.platform_name === undefined) && (missing1 = "platform_name")){
const err1 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/0/properties/attributes/anyOf/1/required",keyword:"required",params:{missingProperty: missing1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
var _valid1 = _errs5 === errors;
valid2 = valid2 || _valid1;
if(!valid2){
const err2 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/0/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
else {
errors = _errs3;
if(vErrors !== null){
if(_errs3){
vErrors.length = _errs3;
}
else {
vErrors = null;
}
}
}
}
}
var _valid0 = _errs1 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
var props0 = {};
props0.attributes = true;
}
const _errs6 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.variables !== undefined){
let data1 = data.variables;
if(Array.isArray(data1)){
const _errs8 = errors;
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
let data2 = data1[i0];
const _errs9 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
if(data2.attributes !== undefined){
let data3 = data2.attributes;
const _errs11 = errors;
let valid6 = false;
const _errs12 = errors;
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
let missing2;
if((data3.platform === undefined) && (missing2 = "platform")){
const err3 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/1/properties/variables/contains/properties/attributes/anyOf/0/required",keyword:"required",params:{missingProperty: missing2}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
var _valid2 = _errs12 === errors;
valid6 = valid6 || _valid2;
const _errs13 = errors;
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
let missing3;
if((data3.standard_name === undefined) && (missing3 = "standard_name")){
const err4 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/1/properties/variables/contains/properties/attributes/anyOf/1/required",keyword:"required",params:{missingProperty: missing3}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
else {
if(data3.standard_name !== undefined){
let data4 = data3.standard_name;
if(!((data4 === "platform_name") || (data4 === "platform_id"))){
const err5 = {instancePath:instancePath+"/variables/" + i0+"/attributes/standard_name",schemaPath:"#/anyOf/1/properties/variables/contains/properties/attributes/anyOf/1/properties/standard_name/enum",keyword:"enum",params:{allowedValues: schema36.anyOf[1].properties.variables.contains.properties.attributes.anyOf[1].properties.standard_name.enum}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
}
var _valid2 = _errs13 === errors;
valid6 = valid6 || _valid2;
if(_valid2){
var props1 = {};
props1.standard_name = true;
}
if(!valid6){
const err6 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/1/properties/variables/contains/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
else {
errors = _errs11;
if(vErrors !== null){
if(_errs11){
vErrors.length = _errs11;
}
else {
vErrors = null;
}
}
}
}
}
var valid4 = _errs9 === errors;
if(valid4){
break;
}
}
if(!valid4){
const err7 = {instancePath:instancePath+"/variables",schemaPath:"#/anyOf/1/properties/variables/contains",keyword:"contains",params:{minContains: 1}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
else {
errors = _errs8;
if(vErrors !== null){
if(_errs8){
vErrors.length = _errs8;
}
else {
vErrors = null;
}
}
}
}
}
}
var _valid0 = _errs6 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
if(props0 !== true){
props0 = props0 || {};
props0.variables = true;
}
}
if(!valid0){
const err8 = {instancePath,schemaPath:"#/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
validate25.errors = vErrors;
return false;
}
else {
errors = _errs0;
if(vErrors !== null){
if(_errs0){
vErrors.length = _errs0;
}
else {
vErrors = null;
}
}
}
validate25.errors = vErrors;
evaluated0.props = props0;
return errors === 0;
}
validate25.evaluated = {"dynamicProps":true,"dynamicItems":false};

export const fits6 = validate26;
const schema37 = {"properties":{"attributes":{"anyOf":[{"required":["creator_email"]},{"required":["publisher_email"]},{"required":["contact"]}]}}};

function validate26(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate26.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data0 = data.attributes;
const _errs1 = errors;
let valid1 = false;
const _errs2 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing0;
if((data0.creator_email === undefined) && (missing0 = "creator_email")){
const err0 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf/0/required",keyword:"required",params:{missingProperty: missing0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
var _valid0 = _errs2 === errors;
valid1 = valid1 || _valid0;
const _errs3 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.publisher_email === undefined) && (missing1 = "publisher_email")){
const err1 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf/1/required",keyword:"required",params:{missingProperty: missing1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
var _valid0 = _errs3 === errors;
valid1 = valid1 || _valid0;
const _errs4 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing2;
if((data0.contact === undefined) && (missing2 = "contact")){
const err2 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf/2/required",keyword:"required",params:{missingProperty: missing2}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
var _valid0 = _errs4 === errors;
valid1 = valid1 || _valid0;
if(!valid1){
const err3 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
validate26.errors = vErrors;
return false;
}
else {
errors = _errs1;
if(vErrors !== null){
if(_errs1){
vErrors.length = _errs1;
}
else {
vErrors = null;
}
}
}
}
}
validate26.errors = vErrors;
return errors === 0;
}
validate26.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits7 = validate27;
const schema38 = {"properties":{"attributes":{"anyOf":[{"required":["history"]},{"required":["processing_level"]},{"required":["processing"]}]}}};

function validate27(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate27.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data0 = data.attributes;
const _errs1 = errors;
let valid1 = false;
const _errs2 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing0;
if((data0.history === undefined) && (missing0 = "history")){
const err0 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf/0/required",keyword:"required",params:{missingProperty: missing0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
var _valid0 = _errs2 === errors;
valid1 = valid1 || _valid0;
const _errs3 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.processing_level === undefined) && (missing1 = "processing_level")){
const err1 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf/1/required",keyword:"required",params:{missingProperty: missing1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
var _valid0 = _errs3 === errors;
valid1 = valid1 || _valid0;
const _errs4 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing2;
if((data0.processing === undefined) && (missing2 = "processing")){
const err2 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf/2/required",keyword:"required",params:{missingProperty: missing2}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
var _valid0 = _errs4 === errors;
valid1 = valid1 || _valid0;
if(!valid1){
const err3 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
validate27.errors = vErrors;
return false;
}
else {
errors = _errs1;
if(vErrors !== null){
if(_errs1){
vErrors.length = _errs1;
}
else {
vErrors = null;
}
}
}
}
}
validate27.errors = vErrors;
return errors === 0;
}
validate27.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits8 = validate28;
const schema39 = {"properties":{"attributes":{"anyOf":[{"required":["license"]},{"required":["licence"]}]}}};

function validate28(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate28.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data0 = data.attributes;
const _errs1 = errors;
let valid1 = false;
const _errs2 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing0;
if((data0.license === undefined) && (missing0 = "license")){
const err0 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf/0/required",keyword:"required",params:{missingProperty: missing0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
var _valid0 = _errs2 === errors;
valid1 = valid1 || _valid0;
const _errs3 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.licence === undefined) && (missing1 = "licence")){
const err1 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf/1/required",keyword:"required",params:{missingProperty: missing1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
var _valid0 = _errs3 === errors;
valid1 = valid1 || _valid0;
if(!valid1){
const err2 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
validate28.errors = vErrors;
return false;
}
else {
errors = _errs1;
if(vErrors !== null){
if(_errs1){
vErrors.length = _errs1;
}
else {
vErrors = null;
}
}
}
}
}
validate28.errors = vErrors;
return errors === 0;
}
validate28.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits9 = validate29;
const schema40 = {"properties":{"role":{"const":"data"},"ancillary":{"const":false},"attributes":{"required":["standard_name"],"properties":{"standard_name":{"enum":["sea_water_practical_salinity","sea_water_absolute_salinity","sea_water_density","sea_water_sigma_t","sea_water_sigma_theta","sea_water_potential_temperature","sea_water_conservative_temperature","speed_of_sound_in_sea_water"]}}}}};

function validate29(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate29.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.role !== undefined){
const _errs0 = errors;
if("data" !== data.role){
validate29.errors = [{instancePath:instancePath+"/role",schemaPath:"#/properties/role/const",keyword:"const",params:{allowedValue: "data"}}];
return false;
}
var valid0 = _errs0 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.ancillary !== undefined){
const _errs1 = errors;
if(false !== data.ancillary){
validate29.errors = [{instancePath:instancePath+"/ancillary",schemaPath:"#/properties/ancillary/const",keyword:"const",params:{allowedValue: false}}];
return false;
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.attributes !== undefined){
let data2 = data.attributes;
const _errs2 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing0;
if((data2.standard_name === undefined) && (missing0 = "standard_name")){
validate29.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
else {
if(data2.standard_name !== undefined){
let data3 = data2.standard_name;
if(!((((((((data3 === "sea_water_practical_salinity") || (data3 === "sea_water_absolute_salinity")) || (data3 === "sea_water_density")) || (data3 === "sea_water_sigma_t")) || (data3 === "sea_water_sigma_theta")) || (data3 === "sea_water_potential_temperature")) || (data3 === "sea_water_conservative_temperature")) || (data3 === "speed_of_sound_in_sea_water"))){
validate29.errors = [{instancePath:instancePath+"/attributes/standard_name",schemaPath:"#/properties/attributes/properties/standard_name/enum",keyword:"enum",params:{allowedValues: schema40.properties.attributes.properties.standard_name.enum}}];
return false;
}
}
}
}
var valid0 = _errs2 === errors;
}
else {
var valid0 = true;
}
}
}
}
validate29.errors = vErrors;
return errors === 0;
}
validate29.evaluated = {"props":{"role":true,"ancillary":true,"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits10 = validate30;
const schema41 = {"properties":{"attributes":{"anyOf":[{"required":["source"]},{"required":["references"]},{"required":["comment"]},{"required":["equation"]},{"required":["method"]}]}}};

function validate30(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate30.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data0 = data.attributes;
const _errs1 = errors;
let valid1 = false;
const _errs2 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing0;
if((data0.source === undefined) && (missing0 = "source")){
const err0 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf/0/required",keyword:"required",params:{missingProperty: missing0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
var _valid0 = _errs2 === errors;
valid1 = valid1 || _valid0;
const _errs3 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.references === undefined) && (missing1 = "references")){
const err1 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf/1/required",keyword:"required",params:{missingProperty: missing1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
var _valid0 = _errs3 === errors;
valid1 = valid1 || _valid0;
const _errs4 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing2;
if((data0.comment === undefined) && (missing2 = "comment")){
const err2 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf/2/required",keyword:"required",params:{missingProperty: missing2}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
var _valid0 = _errs4 === errors;
valid1 = valid1 || _valid0;
const _errs5 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing3;
if((data0.equation === undefined) && (missing3 = "equation")){
const err3 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf/3/required",keyword:"required",params:{missingProperty: missing3}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
var _valid0 = _errs5 === errors;
valid1 = valid1 || _valid0;
const _errs6 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing4;
if((data0.method === undefined) && (missing4 = "method")){
const err4 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf/4/required",keyword:"required",params:{missingProperty: missing4}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
var _valid0 = _errs6 === errors;
valid1 = valid1 || _valid0;
if(!valid1){
const err5 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
validate30.errors = vErrors;
return false;
}
else {
errors = _errs1;
if(vErrors !== null){
if(_errs1){
vErrors.length = _errs1;
}
else {
vErrors = null;
}
}
}
}
}
validate30.errors = vErrors;
return errors === 0;
}
validate30.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits11 = validate31;
const schema42 = {"properties":{"attributes":{"required":["ncei_template_version"]}}};

function validate31(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate31.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data0 = data.attributes;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing0;
if((data0.ncei_template_version === undefined) && (missing0 = "ncei_template_version")){
validate31.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
}
}
}
validate31.errors = vErrors;
return errors === 0;
}
validate31.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits12 = validate32;
const schema43 = {"properties":{"attributes":{"properties":{"ncei_template_version":{"type":"string","pattern":"^NCEI_NetCDF_[A-Za-z]+(_Orthogonal|_Incomplete)?_Template_v[0-9]+\\.[0-9]+$"}}}}};
const pattern6 = new RegExp("^NCEI_NetCDF_[A-Za-z]+(_Orthogonal|_Incomplete)?_Template_v[0-9]+\\.[0-9]+$", "u");

function validate32(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate32.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data0 = data.attributes;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
if(data0.ncei_template_version !== undefined){
let data1 = data0.ncei_template_version;
const _errs1 = errors;
if(errors === _errs1){
if(typeof data1 === "string"){
if(!pattern6.test(data1)){
validate32.errors = [{instancePath:instancePath+"/attributes/ncei_template_version",schemaPath:"#/properties/attributes/properties/ncei_template_version/pattern",keyword:"pattern",params:{pattern: "^NCEI_NetCDF_[A-Za-z]+(_Orthogonal|_Incomplete)?_Template_v[0-9]+\\.[0-9]+$"}}];
return false;
}
}
else {
validate32.errors = [{instancePath:instancePath+"/attributes/ncei_template_version",schemaPath:"#/properties/attributes/properties/ncei_template_version/type",keyword:"type",params:{type: "string"}}];
return false;
}
}
}
}
}
}
validate32.errors = vErrors;
return errors === 0;
}
validate32.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits13 = validate33;
const schema44 = {"properties":{"attributes":{"allOf":[{"if":{"properties":{"ncei_template_version":{"pattern":"^NCEI_NetCDF_Point_"}}},"then":{"properties":{"featureType":{"type":"string","pattern":"^[Pp]oint$"}},"required":["featureType"]}},{"if":{"properties":{"ncei_template_version":{"pattern":"^NCEI_NetCDF_Profile_"}}},"then":{"properties":{"featureType":{"type":"string","pattern":"^[Pp]rofile$"}},"required":["featureType"]}},{"if":{"properties":{"ncei_template_version":{"pattern":"^NCEI_NetCDF_TimeSeries_"}}},"then":{"properties":{"featureType":{"type":"string","pattern":"^[Tt]ime[Ss]eries$"}},"required":["featureType"]}},{"if":{"properties":{"ncei_template_version":{"pattern":"^NCEI_NetCDF_TimeSeriesProfile_"}}},"then":{"properties":{"featureType":{"type":"string","pattern":"^[Tt]ime[Ss]eries[Pp]rofile$"}},"required":["featureType"]}},{"if":{"properties":{"ncei_template_version":{"pattern":"^NCEI_NetCDF_Trajectory_"}}},"then":{"properties":{"featureType":{"type":"string","pattern":"^[Tt]rajectory$"}},"required":["featureType"]}},{"if":{"properties":{"ncei_template_version":{"pattern":"^NCEI_NetCDF_TrajectoryProfile_"}}},"then":{"properties":{"featureType":{"type":"string","pattern":"^[Tt]rajectory[Pp]rofile$"}},"required":["featureType"]}}]}}};
const pattern7 = new RegExp("^NCEI_NetCDF_Point_", "u");
const pattern8 = new RegExp("^[Pp]oint$", "u");
const pattern9 = new RegExp("^NCEI_NetCDF_Profile_", "u");
const pattern10 = new RegExp("^[Pp]rofile$", "u");
const pattern11 = new RegExp("^NCEI_NetCDF_TimeSeries_", "u");
const pattern12 = new RegExp("^[Tt]ime[Ss]eries$", "u");
const pattern13 = new RegExp("^NCEI_NetCDF_TimeSeriesProfile_", "u");
const pattern14 = new RegExp("^[Tt]ime[Ss]eries[Pp]rofile$", "u");
const pattern15 = new RegExp("^NCEI_NetCDF_Trajectory_", "u");
const pattern16 = new RegExp("^[Tt]rajectory$", "u");
const pattern17 = new RegExp("^NCEI_NetCDF_TrajectoryProfile_", "u");
const pattern18 = new RegExp("^[Tt]rajectory[Pp]rofile$", "u");

function validate33(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate33.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data0 = data.attributes;
const _errs1 = errors;
const _errs2 = errors;
let valid2 = true;
const _errs3 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
if(data0.ncei_template_version !== undefined){
let data1 = data0.ncei_template_version;
if(typeof data1 === "string"){
if(!pattern7.test(data1)){
const err0 = {};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
}
}
var _valid0 = _errs3 === errors;
errors = _errs2;
if(vErrors !== null){
if(_errs2){
vErrors.length = _errs2;
}
else {
vErrors = null;
}
}
if(_valid0){
const _errs5 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing0;
if((data0.featureType === undefined) && (missing0 = "featureType")){
validate33.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/allOf/0/then/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
else {
if(data0.featureType !== undefined){
let data2 = data0.featureType;
const _errs6 = errors;
if(errors === _errs6){
if(typeof data2 === "string"){
if(!pattern8.test(data2)){
validate33.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/0/then/properties/featureType/pattern",keyword:"pattern",params:{pattern: "^[Pp]oint$"}}];
return false;
}
}
else {
validate33.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/0/then/properties/featureType/type",keyword:"type",params:{type: "string"}}];
return false;
}
}
}
}
}
var _valid0 = _errs5 === errors;
valid2 = _valid0;
if(valid2){
var props0 = {};
props0.featureType = true;
props0.ncei_template_version = true;
}
}
if(!valid2){
const err1 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/allOf/0/if",keyword:"if",params:{failingKeyword: "then"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
validate33.errors = vErrors;
return false;
}
var valid1 = _errs1 === errors;
if(valid1){
const _errs8 = errors;
const _errs9 = errors;
let valid5 = true;
const _errs10 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
if(data0.ncei_template_version !== undefined){
let data3 = data0.ncei_template_version;
if(typeof data3 === "string"){
if(!pattern9.test(data3)){
const err2 = {};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
}
}
var _valid1 = _errs10 === errors;
errors = _errs9;
if(vErrors !== null){
if(_errs9){
vErrors.length = _errs9;
}
else {
vErrors = null;
}
}
if(_valid1){
const _errs12 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.featureType === undefined) && (missing1 = "featureType")){
validate33.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/allOf/1/then/required",keyword:"required",params:{missingProperty: missing1}}];
return false;
}
else {
if(data0.featureType !== undefined){
let data4 = data0.featureType;
const _errs13 = errors;
if(errors === _errs13){
if(typeof data4 === "string"){
if(!pattern10.test(data4)){
validate33.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/1/then/properties/featureType/pattern",keyword:"pattern",params:{pattern: "^[Pp]rofile$"}}];
return false;
}
}
else {
validate33.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/1/then/properties/featureType/type",keyword:"type",params:{type: "string"}}];
return false;
}
}
}
}
}
var _valid1 = _errs12 === errors;
valid5 = _valid1;
if(valid5){
var props1 = {};
props1.featureType = true;
props1.ncei_template_version = true;
}
}
if(!valid5){
const err3 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/allOf/1/if",keyword:"if",params:{failingKeyword: "then"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
validate33.errors = vErrors;
return false;
}
var valid1 = _errs8 === errors;
if(valid1){
if(props0 !== true && props1 !== undefined){
if(props1 === true){
props0 = true;
}
else {
props0 = props0 || {};
Object.assign(props0, props1);
}
}
const _errs15 = errors;
const _errs16 = errors;
let valid8 = true;
const _errs17 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
if(data0.ncei_template_version !== undefined){
let data5 = data0.ncei_template_version;
if(typeof data5 === "string"){
if(!pattern11.test(data5)){
const err4 = {};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
}
var _valid2 = _errs17 === errors;
errors = _errs16;
if(vErrors !== null){
if(_errs16){
vErrors.length = _errs16;
}
else {
vErrors = null;
}
}
if(_valid2){
const _errs19 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing2;
if((data0.featureType === undefined) && (missing2 = "featureType")){
validate33.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/allOf/2/then/required",keyword:"required",params:{missingProperty: missing2}}];
return false;
}
else {
if(data0.featureType !== undefined){
let data6 = data0.featureType;
const _errs20 = errors;
if(errors === _errs20){
if(typeof data6 === "string"){
if(!pattern12.test(data6)){
validate33.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/2/then/properties/featureType/pattern",keyword:"pattern",params:{pattern: "^[Tt]ime[Ss]eries$"}}];
return false;
}
}
else {
validate33.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/2/then/properties/featureType/type",keyword:"type",params:{type: "string"}}];
return false;
}
}
}
}
}
var _valid2 = _errs19 === errors;
valid8 = _valid2;
if(valid8){
var props2 = {};
props2.featureType = true;
props2.ncei_template_version = true;
}
}
if(!valid8){
const err5 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/allOf/2/if",keyword:"if",params:{failingKeyword: "then"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
validate33.errors = vErrors;
return false;
}
var valid1 = _errs15 === errors;
if(valid1){
if(props0 !== true && props2 !== undefined){
if(props2 === true){
props0 = true;
}
else {
props0 = props0 || {};
Object.assign(props0, props2);
}
}
const _errs22 = errors;
const _errs23 = errors;
let valid11 = true;
const _errs24 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
if(data0.ncei_template_version !== undefined){
let data7 = data0.ncei_template_version;
if(typeof data7 === "string"){
if(!pattern13.test(data7)){
const err6 = {};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
}
var _valid3 = _errs24 === errors;
errors = _errs23;
if(vErrors !== null){
if(_errs23){
vErrors.length = _errs23;
}
else {
vErrors = null;
}
}
if(_valid3){
const _errs26 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing3;
if((data0.featureType === undefined) && (missing3 = "featureType")){
validate33.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/allOf/3/then/required",keyword:"required",params:{missingProperty: missing3}}];
return false;
}
else {
if(data0.featureType !== undefined){
let data8 = data0.featureType;
const _errs27 = errors;
if(errors === _errs27){
if(typeof data8 === "string"){
if(!pattern14.test(data8)){
validate33.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/3/then/properties/featureType/pattern",keyword:"pattern",params:{pattern: "^[Tt]ime[Ss]eries[Pp]rofile$"}}];
return false;
}
}
else {
validate33.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/3/then/properties/featureType/type",keyword:"type",params:{type: "string"}}];
return false;
}
}
}
}
}
var _valid3 = _errs26 === errors;
valid11 = _valid3;
if(valid11){
var props3 = {};
props3.featureType = true;
props3.ncei_template_version = true;
}
}
if(!valid11){
const err7 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/allOf/3/if",keyword:"if",params:{failingKeyword: "then"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
validate33.errors = vErrors;
return false;
}
var valid1 = _errs22 === errors;
if(valid1){
if(props0 !== true && props3 !== undefined){
if(props3 === true){
props0 = true;
}
else {
props0 = props0 || {};
Object.assign(props0, props3);
}
}
const _errs29 = errors;
const _errs30 = errors;
let valid14 = true;
const _errs31 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
if(data0.ncei_template_version !== undefined){
let data9 = data0.ncei_template_version;
if(typeof data9 === "string"){
if(!pattern15.test(data9)){
const err8 = {};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
}
}
var _valid4 = _errs31 === errors;
errors = _errs30;
if(vErrors !== null){
if(_errs30){
vErrors.length = _errs30;
}
else {
vErrors = null;
}
}
if(_valid4){
const _errs33 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing4;
if((data0.featureType === undefined) && (missing4 = "featureType")){
validate33.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/allOf/4/then/required",keyword:"required",params:{missingProperty: missing4}}];
return false;
}
else {
if(data0.featureType !== undefined){
let data10 = data0.featureType;
const _errs34 = errors;
if(errors === _errs34){
if(typeof data10 === "string"){
if(!pattern16.test(data10)){
validate33.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/4/then/properties/featureType/pattern",keyword:"pattern",params:{pattern: "^[Tt]rajectory$"}}];
return false;
}
}
else {
validate33.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/4/then/properties/featureType/type",keyword:"type",params:{type: "string"}}];
return false;
}
}
}
}
}
var _valid4 = _errs33 === errors;
valid14 = _valid4;
if(valid14){
var props4 = {};
props4.featureType = true;
props4.ncei_template_version = true;
}
}
if(!valid14){
const err9 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/allOf/4/if",keyword:"if",params:{failingKeyword: "then"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
validate33.errors = vErrors;
return false;
}
var valid1 = _errs29 === errors;
if(valid1){
if(props0 !== true && props4 !== undefined){
if(props4 === true){
props0 = true;
}
else {
props0 = props0 || {};
Object.assign(props0, props4);
}
}
const _errs36 = errors;
const _errs37 = errors;
let valid17 = true;
const _errs38 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
if(data0.ncei_template_version !== undefined){
let data11 = data0.ncei_template_version;
if(typeof data11 === "string"){
if(!pattern17.test(data11)){
const err10 = {};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
}
}
var _valid5 = _errs38 === errors;
errors = _errs37;
if(vErrors !== null){
if(_errs37){
vErrors.length = _errs37;
}
else {
vErrors = null;
}
}
if(_valid5){
const _errs40 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing5;
if((data0.featureType === undefined) && (missing5 = "featureType")){
validate33.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/allOf/5/then/required",keyword:"required",params:{missingProperty: missing5}}];
return false;
}
else {
if(data0.featureType !== undefined){
let data12 = data0.featureType;
const _errs41 = errors;
if(errors === _errs41){
if(typeof data12 === "string"){
if(!pattern18.test(data12)){
validate33.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/5/then/properties/featureType/pattern",keyword:"pattern",params:{pattern: "^[Tt]rajectory[Pp]rofile$"}}];
return false;
}
}
else {
validate33.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/5/then/properties/featureType/type",keyword:"type",params:{type: "string"}}];
return false;
}
}
}
}
}
var _valid5 = _errs40 === errors;
valid17 = _valid5;
if(valid17){
var props5 = {};
props5.featureType = true;
props5.ncei_template_version = true;
}
}
if(!valid17){
const err11 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/allOf/5/if",keyword:"if",params:{failingKeyword: "then"}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
validate33.errors = vErrors;
return false;
}
var valid1 = _errs36 === errors;
if(valid1){
if(props0 !== true && props5 !== undefined){
if(props5 === true){
props0 = true;
}
else {
props0 = props0 || {};
Object.assign(props0, props5);
}
}
}
}
}
}
}
}
}
}
validate33.errors = vErrors;
return errors === 0;
}
validate33.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits14 = validate34;
const schema45 = {"properties":{"variables":{"not":{"contains":{"properties":{"attributes":{"anyOf":[{"required":["sample_dimension"]},{"required":["instance_dimension"]}]}}}}}}};

function validate34(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate34.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.variables !== undefined){
let data0 = data.variables;
const _errs1 = errors;
const _errs2 = errors;
if(Array.isArray(data0)){
const _errs3 = errors;
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
let data1 = data0[i0];
const _errs4 = errors;
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
if(data1.attributes !== undefined){
let data2 = data1.attributes;
const _errs6 = errors;
let valid4 = false;
const _errs7 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing0;
if((data2.sample_dimension === undefined) && (missing0 = "sample_dimension")){
const err0 = {};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
var _valid0 = _errs7 === errors;
valid4 = valid4 || _valid0;
const _errs8 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing1;
if((data2.instance_dimension === undefined) && (missing1 = "instance_dimension")){
const err1 = {};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
var _valid0 = _errs8 === errors;
valid4 = valid4 || _valid0;
if(!valid4){
const err2 = {};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
else {
errors = _errs6;
if(vErrors !== null){
if(_errs6){
vErrors.length = _errs6;
}
else {
vErrors = null;
}
}
}
}
}
var valid2 = _errs4 === errors;
if(valid2){
break;
}
}
if(!valid2){
const err3 = {};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
else {
errors = _errs3;
if(vErrors !== null){
if(_errs3){
vErrors.length = _errs3;
}
else {
vErrors = null;
}
}
}
}
var valid1 = _errs2 === errors;
if(valid1){
validate34.errors = [{instancePath:instancePath+"/variables",schemaPath:"#/properties/variables/not",keyword:"not",params:{}}];
return false;
}
else {
errors = _errs1;
if(vErrors !== null){
if(_errs1){
vErrors.length = _errs1;
}
else {
vErrors = null;
}
}
}
}
}
validate34.errors = vErrors;
return errors === 0;
}
validate34.evaluated = {"props":{"variables":true},"dynamicProps":false,"dynamicItems":false};

export const fits15 = validate35;
const schema46 = {"properties":{"attributes":{"properties":{"ncei_template_version":{"not":{"pattern":"_Point_"}}}}}};
const pattern19 = new RegExp("_Point_", "u");

function validate35(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate35.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data0 = data.attributes;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
if(data0.ncei_template_version !== undefined){
let data1 = data0.ncei_template_version;
const _errs2 = errors;
const _errs3 = errors;
if(typeof data1 === "string"){
if(!pattern19.test(data1)){
const err0 = {};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
var valid2 = _errs3 === errors;
if(valid2){
validate35.errors = [{instancePath:instancePath+"/attributes/ncei_template_version",schemaPath:"#/properties/attributes/properties/ncei_template_version/not",keyword:"not",params:{}}];
return false;
}
else {
errors = _errs2;
if(vErrors !== null){
if(_errs2){
vErrors.length = _errs2;
}
else {
vErrors = null;
}
}
}
}
}
}
}
validate35.errors = vErrors;
return errors === 0;
}
validate35.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits16 = validate36;
const schema47 = {"properties":{"variables":{"contains":{"properties":{"type":{"enum":["byte","short","int"]},"dimensions":{"minItems":1,"maxItems":1},"attributes":{"required":["cf_role"]}}}}}};

function validate36(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate36.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.variables !== undefined){
let data0 = data.variables;
if(Array.isArray(data0)){
const _errs1 = errors;
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
let data1 = data0[i0];
const _errs2 = errors;
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
if(data1.type !== undefined){
let data2 = data1.type;
const _errs3 = errors;
if(!(((data2 === "byte") || (data2 === "short")) || (data2 === "int"))){
const err0 = {instancePath:instancePath+"/variables/" + i0+"/type",schemaPath:"#/properties/variables/contains/properties/type/enum",keyword:"enum",params:{allowedValues: schema47.properties.variables.contains.properties.type.enum}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
var valid2 = _errs3 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data1.dimensions !== undefined){
let data3 = data1.dimensions;
const _errs4 = errors;
if(Array.isArray(data3)){
if(data3.length > 1){
const err1 = {instancePath:instancePath+"/variables/" + i0+"/dimensions",schemaPath:"#/properties/variables/contains/properties/dimensions/maxItems",keyword:"maxItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
else {
if(data3.length < 1){
const err2 = {instancePath:instancePath+"/variables/" + i0+"/dimensions",schemaPath:"#/properties/variables/contains/properties/dimensions/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
}
var valid2 = _errs4 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data1.attributes !== undefined){
let data4 = data1.attributes;
const _errs5 = errors;
if(data4 && typeof data4 == "object" && !Array.isArray(data4)){
let missing0;
if((data4.cf_role === undefined) && (missing0 = "cf_role")){
const err3 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/properties/variables/contains/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
var valid2 = _errs5 === errors;
}
else {
var valid2 = true;
}
}
}
}
var valid1 = _errs2 === errors;
if(valid1){
break;
}
}
if(!valid1){
validate36.errors = [{instancePath:instancePath+"/variables",schemaPath:"#/properties/variables/contains",keyword:"contains",params:{minContains: 1}}];
return false;
}
else {
errors = _errs1;
if(vErrors !== null){
if(_errs1){
vErrors.length = _errs1;
}
else {
vErrors = null;
}
}
}
}
}
}
validate36.errors = vErrors;
return errors === 0;
}
validate36.evaluated = {"props":{"variables":true},"dynamicProps":false,"dynamicItems":false};

export const fits17 = validate37;
const schema48 = {"properties":{"attributes":{"required":["uuid"]}}};

function validate37(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate37.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data0 = data.attributes;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing0;
if((data0.uuid === undefined) && (missing0 = "uuid")){
validate37.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
}
}
}
validate37.errors = vErrors;
return errors === 0;
}
validate37.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits18 = validate38;
const schema49 = {"properties":{"attributes":{"required":["sea_name"]}}};

function validate38(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate38.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data0 = data.attributes;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing0;
if((data0.sea_name === undefined) && (missing0 = "sea_name")){
validate38.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
}
}
}
validate38.errors = vErrors;
return errors === 0;
}
validate38.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits19 = validate39;
const schema50 = {"properties":{"attributes":{"required":["source"]}}};

function validate39(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate39.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data0 = data.attributes;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing0;
if((data0.source === undefined) && (missing0 = "source")){
validate39.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
}
}
}
validate39.errors = vErrors;
return errors === 0;
}
validate39.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits20 = validate40;
const schema51 = {"properties":{"variables":{"contains":{"properties":{"attributes":{"anyOf":[{"required":["ncei_name"]},{"required":["make_model"]}]}}}}}};

function validate40(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate40.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.variables !== undefined){
let data0 = data.variables;
if(Array.isArray(data0)){
const _errs1 = errors;
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
let data1 = data0[i0];
const _errs2 = errors;
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
if(data1.attributes !== undefined){
let data2 = data1.attributes;
const _errs4 = errors;
let valid3 = false;
const _errs5 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing0;
if((data2.ncei_name === undefined) && (missing0 = "ncei_name")){
const err0 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/properties/variables/contains/properties/attributes/anyOf/0/required",keyword:"required",params:{missingProperty: missing0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
var _valid0 = _errs5 === errors;
valid3 = valid3 || _valid0;
const _errs6 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing1;
if((data2.make_model === undefined) && (missing1 = "make_model")){
const err1 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/properties/variables/contains/properties/attributes/anyOf/1/required",keyword:"required",params:{missingProperty: missing1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
var _valid0 = _errs6 === errors;
valid3 = valid3 || _valid0;
if(!valid3){
const err2 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/properties/variables/contains/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
else {
errors = _errs4;
if(vErrors !== null){
if(_errs4){
vErrors.length = _errs4;
}
else {
vErrors = null;
}
}
}
}
}
var valid1 = _errs2 === errors;
if(valid1){
break;
}
}
if(!valid1){
validate40.errors = [{instancePath:instancePath+"/variables",schemaPath:"#/properties/variables/contains",keyword:"contains",params:{minContains: 1}}];
return false;
}
else {
errors = _errs1;
if(vErrors !== null){
if(_errs1){
vErrors.length = _errs1;
}
else {
vErrors = null;
}
}
}
}
}
}
validate40.errors = vErrors;
return errors === 0;
}
validate40.evaluated = {"props":{"variables":true},"dynamicProps":false,"dynamicItems":false};

export const fits21 = validate41;
const schema52 = {"properties":{"variables":{"contains":{"properties":{"attributes":{"required":["grid_mapping_name","epsg_code"]}}}}}};

function validate41(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate41.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.variables !== undefined){
let data0 = data.variables;
if(Array.isArray(data0)){
const _errs1 = errors;
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
let data1 = data0[i0];
const _errs2 = errors;
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
if(data1.attributes !== undefined){
let data2 = data1.attributes;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing0;
if(((data2.grid_mapping_name === undefined) && (missing0 = "grid_mapping_name")) || ((data2.epsg_code === undefined) && (missing0 = "epsg_code"))){
const err0 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/properties/variables/contains/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
}
}
var valid1 = _errs2 === errors;
if(valid1){
break;
}
}
if(!valid1){
validate41.errors = [{instancePath:instancePath+"/variables",schemaPath:"#/properties/variables/contains",keyword:"contains",params:{minContains: 1}}];
return false;
}
else {
errors = _errs1;
if(vErrors !== null){
if(_errs1){
vErrors.length = _errs1;
}
else {
vErrors = null;
}
}
}
}
}
}
validate41.errors = vErrors;
return errors === 0;
}
validate41.evaluated = {"props":{"variables":true},"dynamicProps":false,"dynamicItems":false};

export const fits22 = validate42;
const schema53 = {"properties":{"role":{"const":"data"},"ancillary":{"const":false},"attributes":{"required":["standard_name"],"properties":{"standard_name":{"pattern":"sea_water"}}}}};
const pattern20 = new RegExp("sea_water", "u");

function validate42(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate42.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.role !== undefined){
const _errs0 = errors;
if("data" !== data.role){
validate42.errors = [{instancePath:instancePath+"/role",schemaPath:"#/properties/role/const",keyword:"const",params:{allowedValue: "data"}}];
return false;
}
var valid0 = _errs0 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.ancillary !== undefined){
const _errs1 = errors;
if(false !== data.ancillary){
validate42.errors = [{instancePath:instancePath+"/ancillary",schemaPath:"#/properties/ancillary/const",keyword:"const",params:{allowedValue: false}}];
return false;
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.attributes !== undefined){
let data2 = data.attributes;
const _errs2 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing0;
if((data2.standard_name === undefined) && (missing0 = "standard_name")){
validate42.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
else {
if(data2.standard_name !== undefined){
let data3 = data2.standard_name;
if(typeof data3 === "string"){
if(!pattern20.test(data3)){
validate42.errors = [{instancePath:instancePath+"/attributes/standard_name",schemaPath:"#/properties/attributes/properties/standard_name/pattern",keyword:"pattern",params:{pattern: "sea_water"}}];
return false;
}
}
}
}
}
var valid0 = _errs2 === errors;
}
else {
var valid0 = true;
}
}
}
}
validate42.errors = vErrors;
return errors === 0;
}
validate42.evaluated = {"props":{"role":true,"ancillary":true,"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits23 = validate43;
const schema54 = {"properties":{"attributes":{"required":["instrument"]}}};

function validate43(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate43.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data0 = data.attributes;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing0;
if((data0.instrument === undefined) && (missing0 = "instrument")){
validate43.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
}
}
}
validate43.errors = vErrors;
return errors === 0;
}
validate43.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const shippedSchemas: Readonly<Record<string, (value: unknown) => boolean>> = {
  "ctd": fits0,
  "ctd/instrument-model/must": fits1,
  "ctd/instrument-serial-number/must": fits2,
  "ctd/calibration-date/must": fits3,
  "ctd/accuracy/must": fits4,
  "ctd/platform/must": fits5,
  "ctd/contact/must": fits6,
  "ctd/processing/must": fits7,
  "ctd/licence/must": fits8,
  "ctd/derived-method/when": fits9,
  "ctd/derived-method/must": fits10,
  "us-template": fits11,
  "us-template/version-text/must": fits12,
  "us-template/version-kind/must": fits13,
  "us-template/no-ragged/must": fits14,
  "us-template/identity/when": fits15,
  "us-template/identity/must": fits16,
  "us-template/uuid/must": fits17,
  "us-template/sea-name/must": fits18,
  "us-template/source/must": fits19,
  "us-template/instrument-variable/must": fits20,
  "us-template/crs-variable/must": fits21,
  "us-template/data-instrument/when": fits22,
  "us-template/data-instrument/must": fits23,
};
