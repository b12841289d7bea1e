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
const schema42 = {"not":{"properties":{"variables":{"contains":{"properties":{"attributes":{"required":["cell_methods"],"properties":{"cell_methods":{"type":"string","pattern":"\\bmean\\b"}}}}}}}}};
const pattern6 = new RegExp("\\bmean\\b", "u");

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
const _errs0 = errors;
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
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing0;
if((data2.cell_methods === undefined) && (missing0 = "cell_methods")){
const err0 = {};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
else {
if(data2.cell_methods !== undefined){
let data3 = data2.cell_methods;
const _errs6 = errors;
if(errors === _errs6){
if(typeof data3 === "string"){
if(!pattern6.test(data3)){
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
else {
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
}
}
var valid0 = _errs1 === errors;
if(valid0){
validate31.errors = [{instancePath,schemaPath:"#/not",keyword:"not",params:{}}];
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
validate31.errors = vErrors;
return errors === 0;
}
validate31.evaluated = {"dynamicProps":false,"dynamicItems":false};

export const fits12 = validate32;
const schema43 = {"anyOf":[{"properties":{"attributes":{"anyOf":[{"required":["sampling_rate"]},{"required":["sampling_interval"]},{"required":["sampling_frequency"]},{"required":["sample_interval"]},{"required":["recording_rate"]},{"required":["time_coverage_resolution"]}]}}},{"properties":{"attributes":{"required":["comment"],"properties":{"comment":{"type":"string","pattern":"([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per second"}}}}},{"properties":{"attributes":{"required":["source"],"properties":{"source":{"type":"string","pattern":"([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per second"}}}}},{"properties":{"attributes":{"required":["history"],"properties":{"history":{"type":"string","pattern":"([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per second"}}}}},{"properties":{"attributes":{"required":["summary"],"properties":{"summary":{"type":"string","pattern":"([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per second"}}}}},{"properties":{"attributes":{"required":["sampling"],"properties":{"sampling":{"type":"string","pattern":"([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per second"}}}}},{"properties":{"attributes":{"required":["instrument"],"properties":{"instrument":{"type":"string","pattern":"([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per second"}}}}},{"properties":{"variables":{"contains":{"anyOf":[{"properties":{"attributes":{"anyOf":[{"required":["sampling_rate"]},{"required":["sampling_interval"]},{"required":["sampling_frequency"]},{"required":["sample_interval"]},{"required":["recording_rate"]}]}}},{"properties":{"attributes":{"required":["comment"],"properties":{"comment":{"type":"string","pattern":"([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per second"}}}}},{"properties":{"attributes":{"required":["sampling"],"properties":{"sampling":{"type":"string","pattern":"([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per second"}}}}},{"properties":{"attributes":{"required":["long_name"],"properties":{"long_name":{"type":"string","pattern":"([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per second"}}}}},{"properties":{"attributes":{"required":["units"],"properties":{"units":{"type":"string","pattern":"^(s|sec|seconds?|min|minutes?|ms|milliseconds?)$"}}}}}]}}}},{"properties":{"variables":{"contains":{"properties":{"axis":{"const":"T"},"role":{"const":"coordinate"}},"required":["axis","role"]}}}}]};
const pattern7 = new RegExp("([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per second", "u");
const pattern16 = new RegExp("^(s|sec|seconds?|min|minutes?|ms|milliseconds?)$", "u");

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
if((data0.sampling_rate === undefined) && (missing0 = "sampling_rate")){
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
if((data0.sampling_interval === undefined) && (missing1 = "sampling_interval")){
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
const _errs6 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing2;
if((data0.sampling_frequency === undefined) && (missing2 = "sampling_frequency")){
const err2 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/0/properties/attributes/anyOf/2/required",keyword:"required",params:{missingProperty: missing2}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
var _valid1 = _errs6 === errors;
valid2 = valid2 || _valid1;
const _errs7 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing3;
if((data0.sample_interval === undefined) && (missing3 = "sample_interval")){
const err3 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/0/properties/attributes/anyOf/3/required",keyword:"required",params:{missingProperty: missing3}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
var _valid1 = _errs7 === errors;
valid2 = valid2 || _valid1;
const _errs8 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing4;
if((data0.recording_rate === undefined) && (missing4 = "recording_rate")){
const err4 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/0/properties/attributes/anyOf/4/required",keyword:"required",params:{missingProperty: missing4}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
var _valid1 = _errs8 === errors;
valid2 = valid2 || _valid1;
const _errs9 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing5;
if((data0.time_coverage_resolution === undefined) && (missing5 = "time_coverage_resolution")){
const err5 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/0/properties/attributes/anyOf/5/required",keyword:"required",params:{missingProperty: missing5}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
var _valid1 = _errs9 === errors;
valid2 = valid2 || _valid1;
if(!valid2){
const err6 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/0/properties/attributes/anyOf",keyword:"anyOf",params:{}};
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
}
}
var _valid0 = _errs1 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
var props0 = {};
props0.attributes = true;
}
const _errs10 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data1 = data.attributes;
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
let missing6;
if((data1.comment === undefined) && (missing6 = "comment")){
const err7 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/1/properties/attributes/required",keyword:"required",params:{missingProperty: missing6}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
else {
if(data1.comment !== undefined){
let data2 = data1.comment;
const _errs12 = errors;
if(errors === _errs12){
if(typeof data2 === "string"){
if(!pattern7.test(data2)){
const err8 = {instancePath:instancePath+"/attributes/comment",schemaPath:"#/anyOf/1/properties/attributes/properties/comment/pattern",keyword:"pattern",params:{pattern: "([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per second"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
else {
const err9 = {instancePath:instancePath+"/attributes/comment",schemaPath:"#/anyOf/1/properties/attributes/properties/comment/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
}
}
}
}
}
var _valid0 = _errs10 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
if(props0 !== true){
props0 = props0 || {};
props0.attributes = true;
}
}
const _errs14 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data3 = data.attributes;
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
let missing7;
if((data3.source === undefined) && (missing7 = "source")){
const err10 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/2/properties/attributes/required",keyword:"required",params:{missingProperty: missing7}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
else {
if(data3.source !== undefined){
let data4 = data3.source;
const _errs16 = errors;
if(errors === _errs16){
if(typeof data4 === "string"){
if(!pattern7.test(data4)){
const err11 = {instancePath:instancePath+"/attributes/source",schemaPath:"#/anyOf/2/properties/attributes/properties/source/pattern",keyword:"pattern",params:{pattern: "([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per second"}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
else {
const err12 = {instancePath:instancePath+"/attributes/source",schemaPath:"#/anyOf/2/properties/attributes/properties/source/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
}
}
}
}
}
var _valid0 = _errs14 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
if(props0 !== true){
props0 = props0 || {};
props0.attributes = true;
}
}
const _errs18 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data5 = data.attributes;
if(data5 && typeof data5 == "object" && !Array.isArray(data5)){
let missing8;
if((data5.history === undefined) && (missing8 = "history")){
const err13 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/3/properties/attributes/required",keyword:"required",params:{missingProperty: missing8}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
else {
if(data5.history !== undefined){
let data6 = data5.history;
const _errs20 = errors;
if(errors === _errs20){
if(typeof data6 === "string"){
if(!pattern7.test(data6)){
const err14 = {instancePath:instancePath+"/attributes/history",schemaPath:"#/anyOf/3/properties/attributes/properties/history/pattern",keyword:"pattern",params:{pattern: "([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per second"}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
else {
const err15 = {instancePath:instancePath+"/attributes/history",schemaPath:"#/anyOf/3/properties/attributes/properties/history/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
}
}
}
}
}
var _valid0 = _errs18 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
if(props0 !== true){
props0 = props0 || {};
props0.attributes = true;
}
}
const _errs22 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data7 = data.attributes;
if(data7 && typeof data7 == "object" && !Array.isArray(data7)){
let missing9;
if((data7.summary === undefined) && (missing9 = "summary")){
const err16 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/4/properties/attributes/required",keyword:"required",params:{missingProperty: missing9}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
else {
if(data7.summary !== undefined){
let data8 = data7.summary;
const _errs24 = errors;
if(errors === _errs24){
if(typeof data8 === "string"){
if(!pattern7.test(data8)){
const err17 = {instancePath:instancePath+"/attributes/summary",schemaPath:"#/anyOf/4/properties/attributes/properties/summary/pattern",keyword:"pattern",params:{pattern: "([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per second"}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
else {
const err18 = {instancePath:instancePath+"/attributes/summary",schemaPath:"#/anyOf/4/properties/attributes/properties/summary/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
}
}
}
}
}
}
var _valid0 = _errs22 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
if(props0 !== true){
props0 = props0 || {};
props0.attributes = true;
}
}
const _errs26 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data9 = data.attributes;
if(data9 && typeof data9 == "object" && !Array.isArray(data9)){
let missing10;
if((data9.sampling === undefined) && (missing10 = "sampling")){
const err19 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/5/properties/attributes/required",keyword:"required",params:{missingProperty: missing10}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
else {
if(data9.sampling !== undefined){
let data10 = data9.sampling;
const _errs28 = errors;
if(errors === _errs28){
if(typeof data10 === "string"){
if(!pattern7.test(data10)){
const err20 = {instancePath:instancePath+"/attributes/sampling",schemaPath:"#/anyOf/5/properties/attributes/properties/sampling/pattern",keyword:"pattern",params:{pattern: "([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per second"}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
}
else {
const err21 = {instancePath:instancePath+"/attributes/sampling",schemaPath:"#/anyOf/5/properties/attributes/properties/sampling/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
}
}
}
}
}
var _valid0 = _errs26 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
if(props0 !== true){
props0 = props0 || {};
props0.attributes = true;
}
}
const _errs30 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data11 = data.attributes;
if(data11 && typeof data11 == "object" && !Array.isArray(data11)){
let missing11;
if((data11.instrument === undefined) && (missing11 = "instrument")){
const err22 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/6/properties/attributes/required",keyword:"required",params:{missingProperty: missing11}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
else {
if(data11.instrument !== undefined){
let data12 = data11.instrument;
const _errs32 = errors;
if(errors === _errs32){
if(typeof data12 === "string"){
if(!pattern7.test(data12)){
const err23 = {instancePath:instancePath+"/attributes/instrument",schemaPath:"#/anyOf/6/properties/attributes/properties/instrument/pattern",keyword:"pattern",params:{pattern: "([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per second"}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
else {
const err24 = {instancePath:instancePath+"/attributes/instrument",schemaPath:"#/anyOf/6/properties/attributes/properties/instrument/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
}
}
}
}
}
}
var _valid0 = _errs30 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
if(props0 !== true){
props0 = props0 || {};
props0.attributes = true;
}
}
const _errs34 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.variables !== undefined){
let data13 = data.variables;
if(Array.isArray(data13)){
const _errs36 = errors;
const len0 = data13.length;
for(let i0=0; i0<len0; i0++){
let data14 = data13[i0];
const _errs37 = errors;
const _errs38 = errors;
let valid17 = false;
const _errs39 = errors;
if(data14 && typeof data14 == "object" && !Array.isArray(data14)){
if(data14.attributes !== undefined){
let data15 = data14.attributes;
const _errs41 = errors;
let valid19 = false;
const _errs42 = errors;
if(data15 && typeof data15 == "object" && !Array.isArray(data15)){
let missing12;
if((data15.sampling_rate === undefined) && (missing12 = "sampling_rate")){
const err25 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/7/properties/variables/contains/anyOf/0/properties/attributes/anyOf/0/required",keyword:"required",params:{missingProperty: missing12}};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
}
var _valid3 = _errs42 === errors;
valid19 = valid19 || _valid3;
const _errs43 = errors;
if(data15 && typeof data15 == "object" && !Array.isArray(data15)){
let missing13;
if((data15.sampling_interval === undefined) && (missing13 = "sampling_interval")){
const err26 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/7/properties/variables/contains/anyOf/0/properties/attributes/anyOf/1/required",keyword:"required",params:{missingProperty: missing13}};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
}
var _valid3 = _errs43 === errors;
valid19 = valid19 || _valid3;
const _errs44 = errors;
if(data15 && typeof data15 == "object" && !Array.isArray(data15)){
let missing14;
if((data15.sampling_frequency === undefined) && (missing14 = "sampling_frequency")){
const err27 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/7/properties/variables/contains/anyOf/0/properties/attributes/anyOf/2/required",keyword:"required",params:{missingProperty: missing14}};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
}
var _valid3 = _errs44 === errors;
valid19 = valid19 || _valid3;
const _errs45 = errors;
if(data15 && typeof data15 == "object" && !Array.isArray(data15)){
let missing15;
if((data15.sample_interval === undefined) && (missing15 = "sample_interval")){
const err28 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/7/properties/variables/contains/anyOf/0/properties/attributes/anyOf/3/required",keyword:"required",params:{missingProperty: missing15}};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
}
var _valid3 = _errs45 === errors;
valid19 = valid19 || _valid3;
const _errs46 = errors;
if(data15 && typeof data15 == "object" && !Array.isArray(data15)){
let missing16;
if((data15.recording_rate === undefined) && (missing16 = "recording_rate")){
const err29 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/7/properties/variables/contains/anyOf/0/properties/attributes/anyOf/4/required",keyword:"required",params:{missingProperty: missing16}};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
}
var _valid3 = _errs46 === errors;
valid19 = valid19 || _valid3;
if(!valid19){
const err30 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/7/properties/variables/contains/anyOf/0/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
else {
errors = _errs41;
if(vErrors !== null){
if(_errs41){
vErrors.length = _errs41;
}
else {
vErrors = null;
}
}
}
}
}
var _valid2 = _errs39 === errors;
valid17 = valid17 || _valid2;
if(_valid2){
var props1 = {};
props1.attributes = true;
}
const _errs47 = errors;
if(data14 && typeof data14 == "object" && !Array.isArray(data14)){
if(data14.attributes !== undefined){
let data16 = data14.attributes;
if(data16 && typeof data16 == "object" && !Array.isArray(data16)){
let missing17;
if((data16.comment === undefined) && (missing17 = "comment")){
const err31 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/7/properties/variables/contains/anyOf/1/properties/attributes/required",keyword:"required",params:{missingProperty: missing17}};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
else {
if(data16.comment !== undefined){
let data17 = data16.comment;
const _errs49 = errors;
if(errors === _errs49){
if(typeof data17 === "string"){
if(!pattern7.test(data17)){
const err32 = {instancePath:instancePath+"/variables/" + i0+"/attributes/comment",schemaPath:"#/anyOf/7/properties/variables/contains/anyOf/1/properties/attributes/properties/comment/pattern",keyword:"pattern",params:{pattern: "([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per second"}};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
}
else {
const err33 = {instancePath:instancePath+"/variables/" + i0+"/attributes/comment",schemaPath:"#/anyOf/7/properties/variables/contains/anyOf/1/properties/attributes/properties/comment/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err33];
}
else {
vErrors.push(err33);
}
errors++;
}
}
}
}
}
}
}
var _valid2 = _errs47 === errors;
valid17 = valid17 || _valid2;
if(_valid2){
if(props1 !== true){
props1 = props1 || {};
props1.attributes = true;
}
}
const _errs51 = errors;
if(data14 && typeof data14 == "object" && !Array.isArray(data14)){
if(data14.attributes !== undefined){
let data18 = data14.attributes;
if(data18 && typeof data18 == "object" && !Array.isArray(data18)){
let missing18;
if((data18.sampling === undefined) && (missing18 = "sampling")){
const err34 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/7/properties/variables/contains/anyOf/2/properties/attributes/required",keyword:"required",params:{missingProperty: missing18}};
if(vErrors === null){
vErrors = [err34];
}
else {
vErrors.push(err34);
}
errors++;
}
else {
if(data18.sampling !== undefined){
let data19 = data18.sampling;
const _errs53 = errors;
if(errors === _errs53){
if(typeof data19 === "string"){
if(!pattern7.test(data19)){
const err35 = {instancePath:instancePath+"/variables/" + i0+"/attributes/sampling",schemaPath:"#/anyOf/7/properties/variables/contains/anyOf/2/properties/attributes/properties/sampling/pattern",keyword:"pattern",params:{pattern: "([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per second"}};
if(vErrors === null){
vErrors = [err35];
}
else {
vErrors.push(err35);
}
errors++;
}
}
else {
const err36 = {instancePath:instancePath+"/variables/" + i0+"/attributes/sampling",schemaPath:"#/anyOf/7/properties/variables/contains/anyOf/2/properties/attributes/properties/sampling/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err36];
}
else {
vErrors.push(err36);
}
errors++;
}
}
}
}
}
}
}
var _valid2 = _errs51 === errors;
valid17 = valid17 || _valid2;
if(_valid2){
if(props1 !== true){
props1 = props1 || {};
props1.attributes = true;
}
}
const _errs55 = errors;
if(data14 && typeof data14 == "object" && !Array.isArray(data14)){
if(data14.attributes !== undefined){
let data20 = data14.attributes;
if(data20 && typeof data20 == "object" && !Array.isArray(data20)){
let missing19;
if((data20.long_name === undefined) && (missing19 = "long_name")){
const err37 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/7/properties/variables/contains/anyOf/3/properties/attributes/required",keyword:"required",params:{missingProperty: missing19}};
if(vErrors === null){
vErrors = [err37];
}
else {
vErrors.push(err37);
}
errors++;
}
else {
if(data20.long_name !== undefined){
let data21 = data20.long_name;
const _errs57 = errors;
if(errors === _errs57){
if(typeof data21 === "string"){
if(!pattern7.test(data21)){
const err38 = {instancePath:instancePath+"/variables/" + i0+"/attributes/long_name",schemaPath:"#/anyOf/7/properties/variables/contains/anyOf/3/properties/attributes/properties/long_name/pattern",keyword:"pattern",params:{pattern: "([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per second"}};
if(vErrors === null){
vErrors = [err38];
}
else {
vErrors.push(err38);
}
errors++;
}
}
else {
const err39 = {instancePath:instancePath+"/variables/" + i0+"/attributes/long_name",schemaPath:"#/anyOf/7/properties/variables/contains/anyOf/3/properties/attributes/properties/long_name/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err39];
}
else {
vErrors.push(err39);
}
errors++;
}
}
}
}
}
}
}
var _valid2 = _errs55 === errors;
valid17 = valid17 || _valid2;
if(_valid2){
if(props1 !== true){
props1 = props1 || {};
props1.attributes = true;
}
}
const _errs59 = errors;
if(data14 && typeof data14 == "object" && !Array.isArray(data14)){
if(data14.attributes !== undefined){
let data22 = data14.attributes;
if(data22 && typeof data22 == "object" && !Array.isArray(data22)){
let missing20;
if((data22.units === undefined) && (missing20 = "units")){
const err40 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/7/properties/variables/contains/anyOf/4/properties/attributes/required",keyword:"required",params:{missingProperty: missing20}};
if(vErrors === null){
vErrors = [err40];
}
else {
vErrors.push(err40);
}
errors++;
}
else {
if(data22.units !== undefined){
let data23 = data22.units;
const _errs61 = errors;
if(errors === _errs61){
if(typeof data23 === "string"){
if(!pattern16.test(data23)){
const err41 = {instancePath:instancePath+"/variables/" + i0+"/attributes/units",schemaPath:"#/anyOf/7/properties/variables/contains/anyOf/4/properties/attributes/properties/units/pattern",keyword:"pattern",params:{pattern: "^(s|sec|seconds?|min|minutes?|ms|milliseconds?)$"}};
if(vErrors === null){
vErrors = [err41];
}
else {
vErrors.push(err41);
}
errors++;
}
}
else {
const err42 = {instancePath:instancePath+"/variables/" + i0+"/attributes/units",schemaPath:"#/anyOf/7/properties/variables/contains/anyOf/4/properties/attributes/properties/units/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err42];
}
else {
vErrors.push(err42);
}
errors++;
}
}
}
}
}
}
}
var _valid2 = _errs59 === errors;
valid17 = valid17 || _valid2;
if(_valid2){
if(props1 !== true){
props1 = props1 || {};
props1.attributes = true;
}
}
if(!valid17){
const err43 = {instancePath:instancePath+"/variables/" + i0,schemaPath:"#/anyOf/7/properties/variables/contains/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err43];
}
else {
vErrors.push(err43);
}
errors++;
}
else {
errors = _errs38;
if(vErrors !== null){
if(_errs38){
vErrors.length = _errs38;
}
else {
vErrors = null;
}
}
}
var valid16 = _errs37 === errors;
if(valid16){
break;
}
}
if(!valid16){
const err44 = {instancePath:instancePath+"/variables",schemaPath:"#/anyOf/7/properties/variables/contains",keyword:"contains",params:{minContains: 1}};
if(vErrors === null){
vErrors = [err44];
}
else {
vErrors.push(err44);
}
errors++;
}
else {
errors = _errs36;
if(vErrors !== null){
if(_errs36){
vErrors.length = _errs36;
}
else {
vErrors = null;
}
}
}
}
}
}
var _valid0 = _errs34 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
if(props0 !== true){
props0 = props0 || {};
props0.variables = true;
}
}
const _errs63 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.variables !== undefined){
let data24 = data.variables;
if(Array.isArray(data24)){
const _errs65 = errors;
const len1 = data24.length;
for(let i1=0; i1<len1; i1++){
let data25 = data24[i1];
const _errs66 = errors;
if(data25 && typeof data25 == "object" && !Array.isArray(data25)){
let missing21;
if(((data25.axis === undefined) && (missing21 = "axis")) || ((data25.role === undefined) && (missing21 = "role"))){
const err45 = {instancePath:instancePath+"/variables/" + i1,schemaPath:"#/anyOf/8/properties/variables/contains/required",keyword:"required",params:{missingProperty: missing21}};
if(vErrors === null){
vErrors = [err45];
}
else {
vErrors.push(err45);
}
errors++;
}
else {
if(data25.axis !== undefined){
const _errs67 = errors;
if("T" !== data25.axis){
const err46 = {instancePath:instancePath+"/variables/" + i1+"/axis",schemaPath:"#/anyOf/8/properties/variables/contains/properties/axis/const",keyword:"const",params:{allowedValue: "T"}};
if(vErrors === null){
vErrors = [err46];
}
else {
vErrors.push(err46);
}
errors++;
}
var valid30 = _errs67 === errors;
}
else {
var valid30 = true;
}
if(valid30){
if(data25.role !== undefined){
const _errs68 = errors;
if("coordinate" !== data25.role){
const err47 = {instancePath:instancePath+"/variables/" + i1+"/role",schemaPath:"#/anyOf/8/properties/variables/contains/properties/role/const",keyword:"const",params:{allowedValue: "coordinate"}};
if(vErrors === null){
vErrors = [err47];
}
else {
vErrors.push(err47);
}
errors++;
}
var valid30 = _errs68 === errors;
}
else {
var valid30 = true;
}
}
}
}
var valid29 = _errs66 === errors;
if(valid29){
break;
}
}
if(!valid29){
const err48 = {instancePath:instancePath+"/variables",schemaPath:"#/anyOf/8/properties/variables/contains",keyword:"contains",params:{minContains: 1}};
if(vErrors === null){
vErrors = [err48];
}
else {
vErrors.push(err48);
}
errors++;
}
else {
errors = _errs65;
if(vErrors !== null){
if(_errs65){
vErrors.length = _errs65;
}
else {
vErrors = null;
}
}
}
}
}
}
var _valid0 = _errs63 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
if(props0 !== true){
props0 = props0 || {};
props0.variables = true;
}
}
if(!valid0){
const err49 = {instancePath,schemaPath:"#/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err49];
}
else {
vErrors.push(err49);
}
errors++;
validate32.errors = vErrors;
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
validate32.errors = vErrors;
evaluated0.props = props0;
return errors === 0;
}
validate32.evaluated = {"dynamicProps":true,"dynamicItems":false};

export const fits13 = validate33;
const schema44 = {"properties":{"axis":{"const":"T"},"dimensions":{"maxItems":1},"attributes":{"required":["standard_name"],"properties":{"standard_name":{"const":"time"}}},"role":{"enum":["auxiliary"]}}};

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
if(data.axis !== undefined){
const _errs0 = errors;
if("T" !== data.axis){
validate33.errors = [{instancePath:instancePath+"/axis",schemaPath:"#/properties/axis/const",keyword:"const",params:{allowedValue: "T"}}];
return false;
}
var valid0 = _errs0 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.dimensions !== undefined){
let data1 = data.dimensions;
const _errs1 = errors;
if(Array.isArray(data1)){
if(data1.length > 1){
validate33.errors = [{instancePath:instancePath+"/dimensions",schemaPath:"#/properties/dimensions/maxItems",keyword:"maxItems",params:{limit: 1}}];
return false;
}
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
validate33.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
else {
if(data2.standard_name !== undefined){
if("time" !== data2.standard_name){
validate33.errors = [{instancePath:instancePath+"/attributes/standard_name",schemaPath:"#/properties/attributes/properties/standard_name/const",keyword:"const",params:{allowedValue: "time"}}];
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
if(valid0){
if(data.role !== undefined){
const _errs4 = errors;
if(!(data.role === "auxiliary")){
validate33.errors = [{instancePath:instancePath+"/role",schemaPath:"#/properties/role/enum",keyword:"enum",params:{allowedValues: schema44.properties.role.enum}}];
return false;
}
var valid0 = _errs4 === errors;
}
else {
var valid0 = true;
}
}
}
}
}
validate33.errors = vErrors;
return errors === 0;
}
validate33.evaluated = {"props":{"axis":true,"dimensions":true,"attributes":true,"role":true},"dynamicProps":false,"dynamicItems":false};

export const fits14 = validate34;
const schema45 = {"anyOf":[{"properties":{"attributes":{"required":["long_name"],"properties":{"long_name":{"type":"string","pattern":"([Ss]tart|[Bb]egin|[Ff]irst|[Bb]ottom|[Dd]eepest|[Ee]nd|[Ll]ast|[Mm]id|[Dd]own)"}}}}},{"properties":{"attributes":{"required":["comment"],"properties":{"comment":{"type":"string","pattern":"([Ss]tart|[Bb]egin|[Ff]irst|[Bb]ottom|[Dd]eepest|[Ee]nd|[Ll]ast|[Mm]id|[Dd]own)"}}}}},{"properties":{"attributes":{"required":["description"],"properties":{"description":{"type":"string","pattern":"([Ss]tart|[Bb]egin|[Ff]irst|[Bb]ottom|[Dd]eepest|[Ee]nd|[Ll]ast|[Mm]id|[Dd]own)"}}}}}]};
const pattern17 = new RegExp("([Ss]tart|[Bb]egin|[Ff]irst|[Bb]ottom|[Dd]eepest|[Ee]nd|[Ll]ast|[Mm]id|[Dd]own)", "u");

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
const _errs0 = errors;
let valid0 = false;
const _errs1 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data0 = data.attributes;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing0;
if((data0.long_name === undefined) && (missing0 = "long_name")){
const err0 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/0/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
else {
if(data0.long_name !== undefined){
let data1 = data0.long_name;
const _errs3 = errors;
if(errors === _errs3){
if(typeof data1 === "string"){
if(!pattern17.test(data1)){
const err1 = {instancePath:instancePath+"/attributes/long_name",schemaPath:"#/anyOf/0/properties/attributes/properties/long_name/pattern",keyword:"pattern",params:{pattern: "([Ss]tart|[Bb]egin|[Ff]irst|[Bb]ottom|[Dd]eepest|[Ee]nd|[Ll]ast|[Mm]id|[Dd]own)"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
else {
const err2 = {instancePath:instancePath+"/attributes/long_name",schemaPath:"#/anyOf/0/properties/attributes/properties/long_name/type",keyword:"type",params:{type: "string"}};
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
}
}
}
var _valid0 = _errs1 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
var props0 = {};
props0.attributes = true;
}
const _errs5 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data2 = data.attributes;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing1;
if((data2.comment === undefined) && (missing1 = "comment")){
const err3 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/1/properties/attributes/required",keyword:"required",params:{missingProperty: missing1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
else {
if(data2.comment !== undefined){
let data3 = data2.comment;
const _errs7 = errors;
if(errors === _errs7){
if(typeof data3 === "string"){
if(!pattern17.test(data3)){
const err4 = {instancePath:instancePath+"/attributes/comment",schemaPath:"#/anyOf/1/properties/attributes/properties/comment/pattern",keyword:"pattern",params:{pattern: "([Ss]tart|[Bb]egin|[Ff]irst|[Bb]ottom|[Dd]eepest|[Ee]nd|[Ll]ast|[Mm]id|[Dd]own)"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
else {
const err5 = {instancePath:instancePath+"/attributes/comment",schemaPath:"#/anyOf/1/properties/attributes/properties/comment/type",keyword:"type",params:{type: "string"}};
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
var _valid0 = _errs5 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
if(props0 !== true){
props0 = props0 || {};
props0.attributes = true;
}
}
const _errs9 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data4 = data.attributes;
if(data4 && typeof data4 == "object" && !Array.isArray(data4)){
let missing2;
if((data4.description === undefined) && (missing2 = "description")){
const err6 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/2/properties/attributes/required",keyword:"required",params:{missingProperty: missing2}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
else {
if(data4.description !== undefined){
let data5 = data4.description;
const _errs11 = errors;
if(errors === _errs11){
if(typeof data5 === "string"){
if(!pattern17.test(data5)){
const err7 = {instancePath:instancePath+"/attributes/description",schemaPath:"#/anyOf/2/properties/attributes/properties/description/pattern",keyword:"pattern",params:{pattern: "([Ss]tart|[Bb]egin|[Ff]irst|[Bb]ottom|[Dd]eepest|[Ee]nd|[Ll]ast|[Mm]id|[Dd]own)"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
else {
const err8 = {instancePath:instancePath+"/attributes/description",schemaPath:"#/anyOf/2/properties/attributes/properties/description/type",keyword:"type",params:{type: "string"}};
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
const err9 = {instancePath,schemaPath:"#/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
validate34.errors = vErrors;
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
validate34.errors = vErrors;
evaluated0.props = props0;
return errors === 0;
}
validate34.evaluated = {"dynamicProps":true,"dynamicItems":false};

export const fits15 = validate35;
const schema46 = {"anyOf":[{"properties":{"attributes":{"required":["comment"],"properties":{"comment":{"type":"string","pattern":"(GPS|GNSS|[Ss]atellite|[Ff]ix(es|ed)?\\b|[Pp]ositioning|[Nn]avigation|chart)"}}}}},{"properties":{"attributes":{"required":["source"],"properties":{"source":{"type":"string","pattern":"(GPS|GNSS|[Ss]atellite|[Ff]ix(es|ed)?\\b|[Pp]ositioning|[Nn]avigation|chart)"}}}}},{"properties":{"attributes":{"required":["summary"],"properties":{"summary":{"type":"string","pattern":"(GPS|GNSS|[Ss]atellite|[Ff]ix(es|ed)?\\b|[Pp]ositioning|[Nn]avigation|chart)"}}}}},{"properties":{"variables":{"contains":{"anyOf":[{"properties":{"attributes":{"required":["long_name"],"properties":{"long_name":{"type":"string","pattern":"(GPS|GNSS|[Ss]atellite|[Ff]ix(es|ed)?\\b|[Pp]ositioning|[Nn]avigation|chart|[Pp]ier)"}}}}},{"properties":{"attributes":{"required":["comment"],"properties":{"comment":{"type":"string","pattern":"(GPS|GNSS|[Ss]atellite|[Ff]ix(es|ed)?\\b|[Pp]ositioning|[Nn]avigation|chart|[Pp]ier)"}}}}},{"properties":{"attributes":{"required":["source"],"properties":{"source":{"type":"string","pattern":"(GPS|GNSS|[Ss]atellite|[Ff]ix(es|ed)?\\b|[Pp]ositioning|[Nn]avigation|chart|[Pp]ier)"}}}}},{"properties":{"attributes":{"anyOf":[{"required":["positioning_system"]},{"required":["position_method"]}]}}},{"properties":{"name":{"pattern":"[Pp][Oo][Ss][Ii][Tt][Ii][Oo][Nn][Ii][Nn][Gg]"}}}]}}}}]};
const pattern20 = new RegExp("(GPS|GNSS|[Ss]atellite|[Ff]ix(es|ed)?\\b|[Pp]ositioning|[Nn]avigation|chart)", "u");
const pattern23 = new RegExp("(GPS|GNSS|[Ss]atellite|[Ff]ix(es|ed)?\\b|[Pp]ositioning|[Nn]avigation|chart|[Pp]ier)", "u");
const pattern26 = new RegExp("[Pp][Oo][Ss][Ii][Tt][Ii][Oo][Nn][Ii][Nn][Gg]", "u");

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
const _errs0 = errors;
let valid0 = false;
const _errs1 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data0 = data.attributes;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing0;
if((data0.comment === undefined) && (missing0 = "comment")){
const err0 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/0/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
else {
if(data0.comment !== undefined){
let data1 = data0.comment;
const _errs3 = errors;
if(errors === _errs3){
if(typeof data1 === "string"){
if(!pattern20.test(data1)){
const err1 = {instancePath:instancePath+"/attributes/comment",schemaPath:"#/anyOf/0/properties/attributes/properties/comment/pattern",keyword:"pattern",params:{pattern: "(GPS|GNSS|[Ss]atellite|[Ff]ix(es|ed)?\\b|[Pp]ositioning|[Nn]avigation|chart)"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
else {
const err2 = {instancePath:instancePath+"/attributes/comment",schemaPath:"#/anyOf/0/properties/attributes/properties/comment/type",keyword:"type",params:{type: "string"}};
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
}
}
}
var _valid0 = _errs1 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
var props0 = {};
props0.attributes = true;
}
const _errs5 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data2 = data.attributes;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing1;
if((data2.source === undefined) && (missing1 = "source")){
const err3 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/1/properties/attributes/required",keyword:"required",params:{missingProperty: missing1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
else {
if(data2.source !== undefined){
let data3 = data2.source;
const _errs7 = errors;
if(errors === _errs7){
if(typeof data3 === "string"){
if(!pattern20.test(data3)){
const err4 = {instancePath:instancePath+"/attributes/source",schemaPath:"#/anyOf/1/properties/attributes/properties/source/pattern",keyword:"pattern",params:{pattern: "(GPS|GNSS|[Ss]atellite|[Ff]ix(es|ed)?\\b|[Pp]ositioning|[Nn]avigation|chart)"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
else {
const err5 = {instancePath:instancePath+"/attributes/source",schemaPath:"#/anyOf/1/properties/attributes/properties/source/type",keyword:"type",params:{type: "string"}};
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
var _valid0 = _errs5 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
if(props0 !== true){
props0 = props0 || {};
props0.attributes = true;
}
}
const _errs9 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.attributes !== undefined){
let data4 = data.attributes;
if(data4 && typeof data4 == "object" && !Array.isArray(data4)){
let missing2;
if((data4.summary === undefined) && (missing2 = "summary")){
const err6 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/2/properties/attributes/required",keyword:"required",params:{missingProperty: missing2}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
else {
if(data4.summary !== undefined){
let data5 = data4.summary;
const _errs11 = errors;
if(errors === _errs11){
if(typeof data5 === "string"){
if(!pattern20.test(data5)){
const err7 = {instancePath:instancePath+"/attributes/summary",schemaPath:"#/anyOf/2/properties/attributes/properties/summary/pattern",keyword:"pattern",params:{pattern: "(GPS|GNSS|[Ss]atellite|[Ff]ix(es|ed)?\\b|[Pp]ositioning|[Nn]avigation|chart)"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
else {
const err8 = {instancePath:instancePath+"/attributes/summary",schemaPath:"#/anyOf/2/properties/attributes/properties/summary/type",keyword:"type",params:{type: "string"}};
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
const _errs13 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.variables !== undefined){
let data6 = data.variables;
if(Array.isArray(data6)){
const _errs15 = errors;
const len0 = data6.length;
for(let i0=0; i0<len0; i0++){
let data7 = data6[i0];
const _errs16 = errors;
const _errs17 = errors;
let valid9 = false;
const _errs18 = errors;
if(data7 && typeof data7 == "object" && !Array.isArray(data7)){
if(data7.attributes !== undefined){
let data8 = data7.attributes;
if(data8 && typeof data8 == "object" && !Array.isArray(data8)){
let missing3;
if((data8.long_name === undefined) && (missing3 = "long_name")){
const err9 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/3/properties/variables/contains/anyOf/0/properties/attributes/required",keyword:"required",params:{missingProperty: missing3}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
else {
if(data8.long_name !== undefined){
let data9 = data8.long_name;
const _errs20 = errors;
if(errors === _errs20){
if(typeof data9 === "string"){
if(!pattern23.test(data9)){
const err10 = {instancePath:instancePath+"/variables/" + i0+"/attributes/long_name",schemaPath:"#/anyOf/3/properties/variables/contains/anyOf/0/properties/attributes/properties/long_name/pattern",keyword:"pattern",params:{pattern: "(GPS|GNSS|[Ss]atellite|[Ff]ix(es|ed)?\\b|[Pp]ositioning|[Nn]avigation|chart|[Pp]ier)"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
else {
const err11 = {instancePath:instancePath+"/variables/" + i0+"/attributes/long_name",schemaPath:"#/anyOf/3/properties/variables/contains/anyOf/0/properties/attributes/properties/long_name/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
}
}
}
}
}
var _valid1 = _errs18 === errors;
valid9 = valid9 || _valid1;
if(_valid1){
var props1 = {};
props1.attributes = true;
}
const _errs22 = errors;
if(data7 && typeof data7 == "object" && !Array.isArray(data7)){
if(data7.attributes !== undefined){
let data10 = data7.attributes;
if(data10 && typeof data10 == "object" && !Array.isArray(data10)){
let missing4;
if((data10.comment === undefined) && (missing4 = "comment")){
const err12 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/3/properties/variables/contains/anyOf/1/properties/attributes/required",keyword:"required",params:{missingProperty: missing4}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
else {
if(data10.comment !== undefined){
let data11 = data10.comment;
const _errs24 = errors;
if(errors === _errs24){
if(typeof data11 === "string"){
if(!pattern23.test(data11)){
const err13 = {instancePath:instancePath+"/variables/" + i0+"/attributes/comment",schemaPath:"#/anyOf/3/properties/variables/contains/anyOf/1/properties/attributes/properties/comment/pattern",keyword:"pattern",params:{pattern: "(GPS|GNSS|[Ss]atellite|[Ff]ix(es|ed)?\\b|[Pp]ositioning|[Nn]avigation|chart|[Pp]ier)"}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
else {
const err14 = {instancePath:instancePath+"/variables/" + i0+"/attributes/comment",schemaPath:"#/anyOf/3/properties/variables/contains/anyOf/1/properties/attributes/properties/comment/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
}
}
}
}
}
var _valid1 = _errs22 === errors;
valid9 = valid9 || _valid1;
if(_valid1){
if(props1 !== true){
props1 = props1 || {};
props1.attributes = true;
}
}
const _errs26 = errors;
if(data7 && typeof data7 == "object" && !Array.isArray(data7)){
if(data7.attributes !== undefined){
let data12 = data7.attributes;
if(data12 && typeof data12 == "object" && !Array.isArray(data12)){
let missing5;
if((data12.source === undefined) && (missing5 = "source")){
const err15 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/3/properties/variables/contains/anyOf/2/properties/attributes/required",keyword:"required",params:{missingProperty: missing5}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
else {
if(data12.source !== undefined){
let data13 = data12.source;
const _errs28 = errors;
if(errors === _errs28){
if(typeof data13 === "string"){
if(!pattern23.test(data13)){
const err16 = {instancePath:instancePath+"/variables/" + i0+"/attributes/source",schemaPath:"#/anyOf/3/properties/variables/contains/anyOf/2/properties/attributes/properties/source/pattern",keyword:"pattern",params:{pattern: "(GPS|GNSS|[Ss]atellite|[Ff]ix(es|ed)?\\b|[Pp]ositioning|[Nn]avigation|chart|[Pp]ier)"}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
else {
const err17 = {instancePath:instancePath+"/variables/" + i0+"/attributes/source",schemaPath:"#/anyOf/3/properties/variables/contains/anyOf/2/properties/attributes/properties/source/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
}
}
}
}
}
var _valid1 = _errs26 === errors;
valid9 = valid9 || _valid1;
if(_valid1){
if(props1 !== true){
props1 = props1 || {};
props1.attributes = true;
}
}
const _errs30 = errors;
if(data7 && typeof data7 == "object" && !Array.isArray(data7)){
if(data7.attributes !== undefined){
let data14 = data7.attributes;
const _errs32 = errors;
let valid17 = false;
const _errs33 = errors;
if(data14 && typeof data14 == "object" && !Array.isArray(data14)){
let missing6;
if((data14.positioning_system === undefined) && (missing6 = "positioning_system")){
const err18 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/3/properties/variables/contains/anyOf/3/properties/attributes/anyOf/0/required",keyword:"required",params:{missingProperty: missing6}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
}
var _valid2 = _errs33 === errors;
valid17 = valid17 || _valid2;
const _errs34 = errors;
if(data14 && typeof data14 == "object" && !Array.isArray(data14)){
let missing7;
if((data14.position_method === undefined) && (missing7 = "position_method")){
const err19 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/3/properties/variables/contains/anyOf/3/properties/attributes/anyOf/1/required",keyword:"required",params:{missingProperty: missing7}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
var _valid2 = _errs34 === errors;
valid17 = valid17 || _valid2;
if(!valid17){
const err20 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/anyOf/3/properties/variables/contains/anyOf/3/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
else {
errors = _errs32;
if(vErrors !== null){
if(_errs32){
vErrors.length = _errs32;
}
else {
vErrors = null;
}
}
}
}
}
var _valid1 = _errs30 === errors;
valid9 = valid9 || _valid1;
if(_valid1){
if(props1 !== true){
props1 = props1 || {};
props1.attributes = true;
}
}
const _errs35 = errors;
if(data7 && typeof data7 == "object" && !Array.isArray(data7)){
if(data7.name !== undefined){
let data15 = data7.name;
if(typeof data15 === "string"){
if(!pattern26.test(data15)){
const err21 = {instancePath:instancePath+"/variables/" + i0+"/name",schemaPath:"#/anyOf/3/properties/variables/contains/anyOf/4/properties/name/pattern",keyword:"pattern",params:{pattern: "[Pp][Oo][Ss][Ii][Tt][Ii][Oo][Nn][Ii][Nn][Gg]"}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
}
}
var _valid1 = _errs35 === errors;
valid9 = valid9 || _valid1;
if(_valid1){
if(props1 !== true){
props1 = props1 || {};
props1.name = true;
}
}
if(!valid9){
const err22 = {instancePath:instancePath+"/variables/" + i0,schemaPath:"#/anyOf/3/properties/variables/contains/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
else {
errors = _errs17;
if(vErrors !== null){
if(_errs17){
vErrors.length = _errs17;
}
else {
vErrors = null;
}
}
}
var valid8 = _errs16 === errors;
if(valid8){
break;
}
}
if(!valid8){
const err23 = {instancePath:instancePath+"/variables",schemaPath:"#/anyOf/3/properties/variables/contains",keyword:"contains",params:{minContains: 1}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
else {
errors = _errs15;
if(vErrors !== null){
if(_errs15){
vErrors.length = _errs15;
}
else {
vErrors = null;
}
}
}
}
}
}
var _valid0 = _errs13 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
if(props0 !== true){
props0 = props0 || {};
props0.variables = true;
}
}
if(!valid0){
const err24 = {instancePath,schemaPath:"#/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
validate35.errors = vErrors;
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
validate35.errors = vErrors;
evaluated0.props = props0;
return errors === 0;
}
validate35.evaluated = {"dynamicProps":true,"dynamicItems":false};

export const fits16 = validate36;
const schema47 = {"properties":{"attributes":{"anyOf":[{"required":["creator_name"]},{"required":["contributor_name"]},{"required":["principal_investigator"]},{"required":["pi_name"]},{"required":["PI_NAME"]}]}}};

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
if(data.attributes !== undefined){
let data0 = data.attributes;
const _errs1 = errors;
let valid1 = false;
const _errs2 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing0;
if((data0.creator_name === undefined) && (missing0 = "creator_name")){
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
if((data0.contributor_name === undefined) && (missing1 = "contributor_name")){
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
if((data0.principal_investigator === undefined) && (missing2 = "principal_investigator")){
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
if((data0.pi_name === undefined) && (missing3 = "pi_name")){
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
if((data0.PI_NAME === undefined) && (missing4 = "PI_NAME")){
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
validate36.errors = vErrors;
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
validate36.errors = vErrors;
return errors === 0;
}
validate36.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits17 = validate37;
const schema48 = {"anyOf":[{"properties":{"attributes":{"anyOf":[{"required":["project"]},{"required":["program"]},{"required":["cruise"]},{"required":["cruise_id"]},{"required":["cruise_name"]},{"required":["survey"]},{"required":["expocode"]},{"required":["project_name"]}]}}},{"properties":{"variables":{"contains":{"properties":{"name":{"pattern":"([Cc]ruise|CRUISE|[Ee]xpocode|PROJECT)"}}}}}}]};
const pattern27 = new RegExp("([Cc]ruise|CRUISE|[Ee]xpocode|PROJECT)", "u");

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
if((data0.project === undefined) && (missing0 = "project")){
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
if((data0.program === undefined) && (missing1 = "program")){
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
const _errs6 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing2;
if((data0.cruise === undefined) && (missing2 = "cruise")){
const err2 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/0/properties/attributes/anyOf/2/required",keyword:"required",params:{missingProperty: missing2}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
var _valid1 = _errs6 === errors;
valid2 = valid2 || _valid1;
const _errs7 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing3;
if((data0.cruise_id === undefined) && (missing3 = "cruise_id")){
const err3 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/0/properties/attributes/anyOf/3/required",keyword:"required",params:{missingProperty: missing3}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
var _valid1 = _errs7 === errors;
valid2 = valid2 || _valid1;
const _errs8 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing4;
if((data0.cruise_name === undefined) && (missing4 = "cruise_name")){
const err4 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/0/properties/attributes/anyOf/4/required",keyword:"required",params:{missingProperty: missing4}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
var _valid1 = _errs8 === errors;
valid2 = valid2 || _valid1;
const _errs9 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing5;
if((data0.survey === undefined) && (missing5 = "survey")){
const err5 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/0/properties/attributes/anyOf/5/required",keyword:"required",params:{missingProperty: missing5}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
var _valid1 = _errs9 === errors;
valid2 = valid2 || _valid1;
const _errs10 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing6;
if((data0.expocode === undefined) && (missing6 = "expocode")){
const err6 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/0/properties/attributes/anyOf/6/required",keyword:"required",params:{missingProperty: missing6}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
var _valid1 = _errs10 === errors;
valid2 = valid2 || _valid1;
const _errs11 = errors;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing7;
if((data0.project_name === undefined) && (missing7 = "project_name")){
const err7 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/0/properties/attributes/anyOf/7/required",keyword:"required",params:{missingProperty: missing7}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
var _valid1 = _errs11 === errors;
valid2 = valid2 || _valid1;
if(!valid2){
const err8 = {instancePath:instancePath+"/attributes",schemaPath:"#/anyOf/0/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
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
const _errs12 = errors;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.variables !== undefined){
let data1 = data.variables;
if(Array.isArray(data1)){
const _errs14 = errors;
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
let data2 = data1[i0];
const _errs15 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
if(data2.name !== undefined){
let data3 = data2.name;
if(typeof data3 === "string"){
if(!pattern27.test(data3)){
const err9 = {instancePath:instancePath+"/variables/" + i0+"/name",schemaPath:"#/anyOf/1/properties/variables/contains/properties/name/pattern",keyword:"pattern",params:{pattern: "([Cc]ruise|CRUISE|[Ee]xpocode|PROJECT)"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
}
}
var valid4 = _errs15 === errors;
if(valid4){
break;
}
}
if(!valid4){
const err10 = {instancePath:instancePath+"/variables",schemaPath:"#/anyOf/1/properties/variables/contains",keyword:"contains",params:{minContains: 1}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
else {
errors = _errs14;
if(vErrors !== null){
if(_errs14){
vErrors.length = _errs14;
}
else {
vErrors = null;
}
}
}
}
}
}
var _valid0 = _errs12 === errors;
valid0 = valid0 || _valid0;
if(_valid0){
if(props0 !== true){
props0 = props0 || {};
props0.variables = true;
}
}
if(!valid0){
const err11 = {instancePath,schemaPath:"#/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
validate37.errors = vErrors;
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
validate37.errors = vErrors;
evaluated0.props = props0;
return errors === 0;
}
validate37.evaluated = {"dynamicProps":true,"dynamicItems":false};

export const fits18 = validate38;
const schema49 = {"properties":{"attributes":{"required":["ncei_template_version"]}}};

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
if((data0.ncei_template_version === undefined) && (missing0 = "ncei_template_version")){
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
const schema50 = {"properties":{"attributes":{"properties":{"ncei_template_version":{"type":"string","pattern":"^NCEI_NetCDF_[A-Za-z]+(_Orthogonal|_Incomplete)?_Template_v[0-9]+\\.[0-9]+$"}}}}};
const pattern28 = new RegExp("^NCEI_NetCDF_[A-Za-z]+(_Orthogonal|_Incomplete)?_Template_v[0-9]+\\.[0-9]+$", "u");

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
if(data0.ncei_template_version !== undefined){
let data1 = data0.ncei_template_version;
const _errs1 = errors;
if(errors === _errs1){
if(typeof data1 === "string"){
if(!pattern28.test(data1)){
validate39.errors = [{instancePath:instancePath+"/attributes/ncei_template_version",schemaPath:"#/properties/attributes/properties/ncei_template_version/pattern",keyword:"pattern",params:{pattern: "^NCEI_NetCDF_[A-Za-z]+(_Orthogonal|_Incomplete)?_Template_v[0-9]+\\.[0-9]+$"}}];
return false;
}
}
else {
validate39.errors = [{instancePath:instancePath+"/attributes/ncei_template_version",schemaPath:"#/properties/attributes/properties/ncei_template_version/type",keyword:"type",params:{type: "string"}}];
return false;
}
}
}
}
}
}
validate39.errors = vErrors;
return errors === 0;
}
validate39.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits20 = validate40;
const schema51 = {"properties":{"attributes":{"allOf":[{"if":{"properties":{"ncei_template_version":{"pattern":"^NCEI_NetCDF_Point_"}}},"then":{"properties":{"featureType":{"type":"string","pattern":"^[Pp]oint$"}},"required":["featureType"]}},{"if":{"properties":{"ncei_template_version":{"pattern":"^NCEI_NetCDF_Profile_"}}},"then":{"properties":{"featureType":{"type":"string","pattern":"^[Pp]rofile$"}},"required":["featureType"]}},{"if":{"properties":{"ncei_template_version":{"pattern":"^NCEI_NetCDF_TimeSeries_"}}},"then":{"properties":{"featureType":{"type":"string","pattern":"^[Tt]ime[Ss]eries$"}},"required":["featureType"]}},{"if":{"properties":{"ncei_template_version":{"pattern":"^NCEI_NetCDF_TimeSeriesProfile_"}}},"then":{"properties":{"featureType":{"type":"string","pattern":"^[Tt]ime[Ss]eries[Pp]rofile$"}},"required":["featureType"]}},{"if":{"properties":{"ncei_template_version":{"pattern":"^NCEI_NetCDF_Trajectory_"}}},"then":{"properties":{"featureType":{"type":"string","pattern":"^[Tt]rajectory$"}},"required":["featureType"]}},{"if":{"properties":{"ncei_template_version":{"pattern":"^NCEI_NetCDF_TrajectoryProfile_"}}},"then":{"properties":{"featureType":{"type":"string","pattern":"^[Tt]rajectory[Pp]rofile$"}},"required":["featureType"]}}]}}};
const pattern29 = new RegExp("^NCEI_NetCDF_Point_", "u");
const pattern30 = new RegExp("^[Pp]oint$", "u");
const pattern31 = new RegExp("^NCEI_NetCDF_Profile_", "u");
const pattern32 = new RegExp("^[Pp]rofile$", "u");
const pattern33 = new RegExp("^NCEI_NetCDF_TimeSeries_", "u");
const pattern34 = new RegExp("^[Tt]ime[Ss]eries$", "u");
const pattern35 = new RegExp("^NCEI_NetCDF_TimeSeriesProfile_", "u");
const pattern36 = new RegExp("^[Tt]ime[Ss]eries[Pp]rofile$", "u");
const pattern37 = new RegExp("^NCEI_NetCDF_Trajectory_", "u");
const pattern38 = new RegExp("^[Tt]rajectory$", "u");
const pattern39 = new RegExp("^NCEI_NetCDF_TrajectoryProfile_", "u");
const pattern40 = new RegExp("^[Tt]rajectory[Pp]rofile$", "u");

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
if(!pattern29.test(data1)){
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
validate40.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/allOf/0/then/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
else {
if(data0.featureType !== undefined){
let data2 = data0.featureType;
const _errs6 = errors;
if(errors === _errs6){
if(typeof data2 === "string"){
if(!pattern30.test(data2)){
validate40.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/0/then/properties/featureType/pattern",keyword:"pattern",params:{pattern: "^[Pp]oint$"}}];
return false;
}
}
else {
validate40.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/0/then/properties/featureType/type",keyword:"type",params:{type: "string"}}];
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
validate40.errors = vErrors;
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
if(!pattern31.test(data3)){
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
validate40.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/allOf/1/then/required",keyword:"required",params:{missingProperty: missing1}}];
return false;
}
else {
if(data0.featureType !== undefined){
let data4 = data0.featureType;
const _errs13 = errors;
if(errors === _errs13){
if(typeof data4 === "string"){
if(!pattern32.test(data4)){
validate40.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/1/then/properties/featureType/pattern",keyword:"pattern",params:{pattern: "^[Pp]rofile$"}}];
return false;
}
}
else {
validate40.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/1/then/properties/featureType/type",keyword:"type",params:{type: "string"}}];
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
validate40.errors = vErrors;
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
if(!pattern33.test(data5)){
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
validate40.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/allOf/2/then/required",keyword:"required",params:{missingProperty: missing2}}];
return false;
}
else {
if(data0.featureType !== undefined){
let data6 = data0.featureType;
const _errs20 = errors;
if(errors === _errs20){
if(typeof data6 === "string"){
if(!pattern34.test(data6)){
validate40.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/2/then/properties/featureType/pattern",keyword:"pattern",params:{pattern: "^[Tt]ime[Ss]eries$"}}];
return false;
}
}
else {
validate40.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/2/then/properties/featureType/type",keyword:"type",params:{type: "string"}}];
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
validate40.errors = vErrors;
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
if(!pattern35.test(data7)){
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
validate40.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/allOf/3/then/required",keyword:"required",params:{missingProperty: missing3}}];
return false;
}
else {
if(data0.featureType !== undefined){
let data8 = data0.featureType;
const _errs27 = errors;
if(errors === _errs27){
if(typeof data8 === "string"){
if(!pattern36.test(data8)){
validate40.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/3/then/properties/featureType/pattern",keyword:"pattern",params:{pattern: "^[Tt]ime[Ss]eries[Pp]rofile$"}}];
return false;
}
}
else {
validate40.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/3/then/properties/featureType/type",keyword:"type",params:{type: "string"}}];
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
validate40.errors = vErrors;
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
if(!pattern37.test(data9)){
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
validate40.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/allOf/4/then/required",keyword:"required",params:{missingProperty: missing4}}];
return false;
}
else {
if(data0.featureType !== undefined){
let data10 = data0.featureType;
const _errs34 = errors;
if(errors === _errs34){
if(typeof data10 === "string"){
if(!pattern38.test(data10)){
validate40.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/4/then/properties/featureType/pattern",keyword:"pattern",params:{pattern: "^[Tt]rajectory$"}}];
return false;
}
}
else {
validate40.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/4/then/properties/featureType/type",keyword:"type",params:{type: "string"}}];
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
validate40.errors = vErrors;
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
if(!pattern39.test(data11)){
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
validate40.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/allOf/5/then/required",keyword:"required",params:{missingProperty: missing5}}];
return false;
}
else {
if(data0.featureType !== undefined){
let data12 = data0.featureType;
const _errs41 = errors;
if(errors === _errs41){
if(typeof data12 === "string"){
if(!pattern40.test(data12)){
validate40.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/5/then/properties/featureType/pattern",keyword:"pattern",params:{pattern: "^[Tt]rajectory[Pp]rofile$"}}];
return false;
}
}
else {
validate40.errors = [{instancePath:instancePath+"/attributes/featureType",schemaPath:"#/properties/attributes/allOf/5/then/properties/featureType/type",keyword:"type",params:{type: "string"}}];
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
validate40.errors = vErrors;
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
validate40.errors = vErrors;
return errors === 0;
}
validate40.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits21 = validate41;
const schema52 = {"properties":{"variables":{"not":{"contains":{"properties":{"attributes":{"anyOf":[{"required":["sample_dimension"]},{"required":["instance_dimension"]}]}}}}}}};

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
validate41.errors = [{instancePath:instancePath+"/variables",schemaPath:"#/properties/variables/not",keyword:"not",params:{}}];
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
validate41.errors = vErrors;
return errors === 0;
}
validate41.evaluated = {"props":{"variables":true},"dynamicProps":false,"dynamicItems":false};

export const fits22 = validate42;
const schema53 = {"properties":{"attributes":{"properties":{"ncei_template_version":{"not":{"pattern":"_Point_"}}}}}};
const pattern41 = new RegExp("_Point_", "u");

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
if(data.attributes !== undefined){
let data0 = data.attributes;
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
if(data0.ncei_template_version !== undefined){
let data1 = data0.ncei_template_version;
const _errs2 = errors;
const _errs3 = errors;
if(typeof data1 === "string"){
if(!pattern41.test(data1)){
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
validate42.errors = [{instancePath:instancePath+"/attributes/ncei_template_version",schemaPath:"#/properties/attributes/properties/ncei_template_version/not",keyword:"not",params:{}}];
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
validate42.errors = vErrors;
return errors === 0;
}
validate42.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits23 = validate43;
const schema54 = {"properties":{"variables":{"contains":{"properties":{"type":{"enum":["byte","short","int"]},"dimensions":{"minItems":1,"maxItems":1},"attributes":{"required":["cf_role"]}}}}}};

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
const err0 = {instancePath:instancePath+"/variables/" + i0+"/type",schemaPath:"#/properties/variables/contains/properties/type/enum",keyword:"enum",params:{allowedValues: schema54.properties.variables.contains.properties.type.enum}};
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
validate43.errors = [{instancePath:instancePath+"/variables",schemaPath:"#/properties/variables/contains",keyword:"contains",params:{minContains: 1}}];
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
validate43.errors = vErrors;
return errors === 0;
}
validate43.evaluated = {"props":{"variables":true},"dynamicProps":false,"dynamicItems":false};

export const fits24 = validate44;
const schema55 = {"properties":{"attributes":{"required":["uuid"]}}};

function validate44(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate44.evaluated;
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
validate44.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
}
}
}
validate44.errors = vErrors;
return errors === 0;
}
validate44.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits25 = validate45;
const schema56 = {"properties":{"attributes":{"required":["sea_name"]}}};

function validate45(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate45.evaluated;
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
validate45.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
}
}
}
validate45.errors = vErrors;
return errors === 0;
}
validate45.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits26 = validate46;
const schema57 = {"properties":{"attributes":{"required":["source"]}}};

function validate46(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate46.evaluated;
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
validate46.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
}
}
}
validate46.errors = vErrors;
return errors === 0;
}
validate46.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits27 = validate47;
const schema58 = {"properties":{"variables":{"contains":{"properties":{"attributes":{"anyOf":[{"required":["ncei_name"]},{"required":["make_model"]}]}}}}}};

function validate47(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate47.evaluated;
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
validate47.errors = [{instancePath:instancePath+"/variables",schemaPath:"#/properties/variables/contains",keyword:"contains",params:{minContains: 1}}];
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
validate47.errors = vErrors;
return errors === 0;
}
validate47.evaluated = {"props":{"variables":true},"dynamicProps":false,"dynamicItems":false};

export const fits28 = validate48;
const schema59 = {"properties":{"variables":{"contains":{"properties":{"attributes":{"required":["grid_mapping_name","epsg_code"]}}}}}};

function validate48(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate48.evaluated;
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
validate48.errors = [{instancePath:instancePath+"/variables",schemaPath:"#/properties/variables/contains",keyword:"contains",params:{minContains: 1}}];
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
validate48.errors = vErrors;
return errors === 0;
}
validate48.evaluated = {"props":{"variables":true},"dynamicProps":false,"dynamicItems":false};

export const fits29 = validate49;
const schema60 = {"properties":{"role":{"const":"data"},"ancillary":{"const":false},"attributes":{"required":["standard_name"],"properties":{"standard_name":{"pattern":"sea_water"}}}}};
const pattern42 = new RegExp("sea_water", "u");

function validate49(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate49.evaluated;
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
validate49.errors = [{instancePath:instancePath+"/role",schemaPath:"#/properties/role/const",keyword:"const",params:{allowedValue: "data"}}];
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
validate49.errors = [{instancePath:instancePath+"/ancillary",schemaPath:"#/properties/ancillary/const",keyword:"const",params:{allowedValue: false}}];
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
validate49.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
else {
if(data2.standard_name !== undefined){
let data3 = data2.standard_name;
if(typeof data3 === "string"){
if(!pattern42.test(data3)){
validate49.errors = [{instancePath:instancePath+"/attributes/standard_name",schemaPath:"#/properties/attributes/properties/standard_name/pattern",keyword:"pattern",params:{pattern: "sea_water"}}];
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
validate49.errors = vErrors;
return errors === 0;
}
validate49.evaluated = {"props":{"role":true,"ancillary":true,"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits30 = validate50;
const schema61 = {"properties":{"attributes":{"required":["instrument"]}}};

function validate50(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate50.evaluated;
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
validate50.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
}
}
}
validate50.errors = vErrors;
return errors === 0;
}
validate50.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits31 = validate51;
const schema62 = {"properties":{"variables":{"contains":{"anyOf":[{"properties":{"attributes":{"anyOf":[{"required":["ncei_code"]},{"required":["call_sign"]},{"required":["ices_code"]},{"required":["wmo_code"]},{"required":["imo_code"]},{"required":["ioos_code"]}]}}},{"properties":{"name":{"pattern":"^[Pp]latform"}}}]}}}};
const pattern43 = new RegExp("^[Pp]latform", "u");

function validate51(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate51.evaluated;
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
if((data2.ncei_code === undefined) && (missing0 = "ncei_code")){
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
if((data2.call_sign === undefined) && (missing1 = "call_sign")){
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
const _errs9 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing2;
if((data2.ices_code === undefined) && (missing2 = "ices_code")){
const err2 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/properties/variables/contains/anyOf/0/properties/attributes/anyOf/2/required",keyword:"required",params:{missingProperty: missing2}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
var _valid1 = _errs9 === errors;
valid4 = valid4 || _valid1;
const _errs10 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing3;
if((data2.wmo_code === undefined) && (missing3 = "wmo_code")){
const err3 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/properties/variables/contains/anyOf/0/properties/attributes/anyOf/3/required",keyword:"required",params:{missingProperty: missing3}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
var _valid1 = _errs10 === errors;
valid4 = valid4 || _valid1;
const _errs11 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing4;
if((data2.imo_code === undefined) && (missing4 = "imo_code")){
const err4 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/properties/variables/contains/anyOf/0/properties/attributes/anyOf/4/required",keyword:"required",params:{missingProperty: missing4}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
var _valid1 = _errs11 === errors;
valid4 = valid4 || _valid1;
const _errs12 = errors;
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing5;
if((data2.ioos_code === undefined) && (missing5 = "ioos_code")){
const err5 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/properties/variables/contains/anyOf/0/properties/attributes/anyOf/5/required",keyword:"required",params:{missingProperty: missing5}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
var _valid1 = _errs12 === errors;
valid4 = valid4 || _valid1;
if(!valid4){
const err6 = {instancePath:instancePath+"/variables/" + i0+"/attributes",schemaPath:"#/properties/variables/contains/anyOf/0/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
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
const _errs13 = errors;
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
if(data1.name !== undefined){
let data3 = data1.name;
if(typeof data3 === "string"){
if(!pattern43.test(data3)){
const err7 = {instancePath:instancePath+"/variables/" + i0+"/name",schemaPath:"#/properties/variables/contains/anyOf/1/properties/name/pattern",keyword:"pattern",params:{pattern: "^[Pp]latform"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
}
}
var _valid0 = _errs13 === errors;
valid2 = valid2 || _valid0;
if(_valid0){
if(props0 !== true){
props0 = props0 || {};
props0.name = true;
}
}
if(!valid2){
const err8 = {instancePath:instancePath+"/variables/" + i0,schemaPath:"#/properties/variables/contains/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
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
validate51.errors = [{instancePath:instancePath+"/variables",schemaPath:"#/properties/variables/contains",keyword:"contains",params:{minContains: 1}}];
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
validate51.errors = vErrors;
return errors === 0;
}
validate51.evaluated = {"props":{"variables":true},"dynamicProps":false,"dynamicItems":false};

export const fits32 = validate52;
const schema63 = {"properties":{"role":{"const":"data"},"ancillary":{"const":false},"attributes":{"required":["standard_name"],"properties":{"standard_name":{"pattern":"sea_water"}}}}};

function validate52(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate52.evaluated;
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
validate52.errors = [{instancePath:instancePath+"/role",schemaPath:"#/properties/role/const",keyword:"const",params:{allowedValue: "data"}}];
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
validate52.errors = [{instancePath:instancePath+"/ancillary",schemaPath:"#/properties/ancillary/const",keyword:"const",params:{allowedValue: false}}];
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
validate52.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
else {
if(data2.standard_name !== undefined){
let data3 = data2.standard_name;
if(typeof data3 === "string"){
if(!pattern42.test(data3)){
validate52.errors = [{instancePath:instancePath+"/attributes/standard_name",schemaPath:"#/properties/attributes/properties/standard_name/pattern",keyword:"pattern",params:{pattern: "sea_water"}}];
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
validate52.errors = vErrors;
return errors === 0;
}
validate52.evaluated = {"props":{"role":true,"ancillary":true,"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits33 = validate53;
const schema64 = {"properties":{"attributes":{"anyOf":[{"required":["platform"]}]}}};

function validate53(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate53.evaluated;
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
if((data0.platform === undefined) && (missing0 = "platform")){
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
if(!valid1){
const err1 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
validate53.errors = vErrors;
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
validate53.errors = vErrors;
return errors === 0;
}
validate53.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits34 = validate54;
const schema65 = {"properties":{"role":{"const":"data"},"ancillary":{"const":false},"attributes":{"required":["standard_name"],"properties":{"standard_name":{"pattern":"sea_water"}}}}};

function validate54(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate54.evaluated;
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
validate54.errors = [{instancePath:instancePath+"/role",schemaPath:"#/properties/role/const",keyword:"const",params:{allowedValue: "data"}}];
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
validate54.errors = [{instancePath:instancePath+"/ancillary",schemaPath:"#/properties/ancillary/const",keyword:"const",params:{allowedValue: false}}];
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
validate54.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
else {
if(data2.standard_name !== undefined){
let data3 = data2.standard_name;
if(typeof data3 === "string"){
if(!pattern42.test(data3)){
validate54.errors = [{instancePath:instancePath+"/attributes/standard_name",schemaPath:"#/properties/attributes/properties/standard_name/pattern",keyword:"pattern",params:{pattern: "sea_water"}}];
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
validate54.errors = vErrors;
return errors === 0;
}
validate54.evaluated = {"props":{"role":true,"ancillary":true,"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits35 = validate55;
const schema66 = {"properties":{"attributes":{"anyOf":[{"required":["grid_mapping"]}]}}};

function validate55(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate55.evaluated;
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
if((data0.grid_mapping === undefined) && (missing0 = "grid_mapping")){
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
if(!valid1){
const err1 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
validate55.errors = vErrors;
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
validate55.errors = vErrors;
return errors === 0;
}
validate55.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits36 = validate56;
const schema67 = {"properties":{"role":{"const":"data"},"ancillary":{"const":false},"attributes":{"required":["standard_name"],"properties":{"standard_name":{"pattern":"sea_water"}}}}};

function validate56(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate56.evaluated;
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
validate56.errors = [{instancePath:instancePath+"/role",schemaPath:"#/properties/role/const",keyword:"const",params:{allowedValue: "data"}}];
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
validate56.errors = [{instancePath:instancePath+"/ancillary",schemaPath:"#/properties/ancillary/const",keyword:"const",params:{allowedValue: false}}];
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
validate56.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
else {
if(data2.standard_name !== undefined){
let data3 = data2.standard_name;
if(typeof data3 === "string"){
if(!pattern42.test(data3)){
validate56.errors = [{instancePath:instancePath+"/attributes/standard_name",schemaPath:"#/properties/attributes/properties/standard_name/pattern",keyword:"pattern",params:{pattern: "sea_water"}}];
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
validate56.errors = vErrors;
return errors === 0;
}
validate56.evaluated = {"props":{"role":true,"ancillary":true,"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits37 = validate57;
const schema68 = {"properties":{"attributes":{"anyOf":[{"required":["coverage_content_type"]}]}}};

function validate57(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate57.evaluated;
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
if((data0.coverage_content_type === undefined) && (missing0 = "coverage_content_type")){
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
if(!valid1){
const err1 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
validate57.errors = vErrors;
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
validate57.errors = vErrors;
return errors === 0;
}
validate57.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits38 = validate58;
const schema69 = {"properties":{"role":{"const":"data"},"ancillary":{"const":false},"attributes":{"required":["standard_name"],"properties":{"standard_name":{"pattern":"sea_water"}}}}};

function validate58(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate58.evaluated;
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
validate58.errors = [{instancePath:instancePath+"/role",schemaPath:"#/properties/role/const",keyword:"const",params:{allowedValue: "data"}}];
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
validate58.errors = [{instancePath:instancePath+"/ancillary",schemaPath:"#/properties/ancillary/const",keyword:"const",params:{allowedValue: false}}];
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
validate58.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
else {
if(data2.standard_name !== undefined){
let data3 = data2.standard_name;
if(typeof data3 === "string"){
if(!pattern42.test(data3)){
validate58.errors = [{instancePath:instancePath+"/attributes/standard_name",schemaPath:"#/properties/attributes/properties/standard_name/pattern",keyword:"pattern",params:{pattern: "sea_water"}}];
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
validate58.errors = vErrors;
return errors === 0;
}
validate58.evaluated = {"props":{"role":true,"ancillary":true,"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits39 = validate59;
const schema70 = {"properties":{"attributes":{"anyOf":[{"required":["valid_min"]},{"required":["valid_range"]},{"required":["actual_range"]},{"required":["data_min"]}]}}};

function validate59(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate59.evaluated;
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
if((data0.valid_min === undefined) && (missing0 = "valid_min")){
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
if((data0.valid_range === undefined) && (missing1 = "valid_range")){
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
if((data0.actual_range === undefined) && (missing2 = "actual_range")){
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
if((data0.data_min === undefined) && (missing3 = "data_min")){
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
if(!valid1){
const err4 = {instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
validate59.errors = vErrors;
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
validate59.errors = vErrors;
return errors === 0;
}
validate59.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits40 = validate60;
const schema71 = {"properties":{"role":{"const":"data"},"ancillary":{"const":false},"attributes":{"required":["units"],"properties":{"coverage_content_type":{"const":"physicalMeasurement"}}}}};

function validate60(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate60.evaluated;
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
validate60.errors = [{instancePath:instancePath+"/role",schemaPath:"#/properties/role/const",keyword:"const",params:{allowedValue: "data"}}];
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
validate60.errors = [{instancePath:instancePath+"/ancillary",schemaPath:"#/properties/ancillary/const",keyword:"const",params:{allowedValue: false}}];
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
if((data2.units === undefined) && (missing0 = "units")){
validate60.errors = [{instancePath:instancePath+"/attributes",schemaPath:"#/properties/attributes/required",keyword:"required",params:{missingProperty: missing0}}];
return false;
}
else {
if(data2.coverage_content_type !== undefined){
if("physicalMeasurement" !== data2.coverage_content_type){
validate60.errors = [{instancePath:instancePath+"/attributes/coverage_content_type",schemaPath:"#/properties/attributes/properties/coverage_content_type/const",keyword:"const",params:{allowedValue: "physicalMeasurement"}}];
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
validate60.errors = vErrors;
return errors === 0;
}
validate60.evaluated = {"props":{"role":true,"ancillary":true,"attributes":true},"dynamicProps":false,"dynamicItems":false};

export const fits41 = validate61;
const schema72 = {"properties":{"attributes":{"anyOf":[{"required":["standard_name"]},{"required":["ncei_name"]}]}}};

function validate61(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate61.evaluated;
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
if((data0.standard_name === undefined) && (missing0 = "standard_name")){
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
if((data0.ncei_name === undefined) && (missing1 = "ncei_name")){
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
validate61.errors = vErrors;
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
validate61.errors = vErrors;
return errors === 0;
}
validate61.evaluated = {"props":{"attributes":true},"dynamicProps":false,"dynamicItems":false};

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
  "ctd/sampling-rate/when": fits11,
  "ctd/sampling-rate/must": fits12,
  "ctd/time-moment/when": fits13,
  "ctd/time-moment/must": fits14,
  "ctd/position-method/must": fits15,
  "ctd/people/must": fits16,
  "ctd/collection/must": fits17,
  "us-template": fits18,
  "us-template/version-text/must": fits19,
  "us-template/version-kind/must": fits20,
  "us-template/no-ragged/must": fits21,
  "us-template/identity/when": fits22,
  "us-template/identity/must": fits23,
  "us-template/uuid/must": fits24,
  "us-template/sea-name/must": fits25,
  "us-template/source/must": fits26,
  "us-template/instrument-variable/must": fits27,
  "us-template/crs-variable/must": fits28,
  "us-template/data-instrument/when": fits29,
  "us-template/data-instrument/must": fits30,
  "us-template/platform-variable/must": fits31,
  "us-template/data-platform/when": fits32,
  "us-template/data-platform/must": fits33,
  "us-template/data-mapping/when": fits34,
  "us-template/data-mapping/must": fits35,
  "us-template/data-content/when": fits36,
  "us-template/data-content/must": fits37,
  "us-template/data-range/when": fits38,
  "us-template/data-range/must": fits39,
  "us-template/data-name/when": fits40,
  "us-template/data-name/must": fits41,
};
