// @ts-nocheck
// Schemas of the rule documents that ship, compiled. Made by tools/generate.ts; change the documents, not this file.
const Xe=fe;function fe(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=fe.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)){if(t.attributes!==void 0){let l=t.attributes;const o=r;if(l&&typeof l==
"object"&&!Array.isArray(l)){let P;if(l.featureType===void 0&&(P="featureType")){const c={};e===null?e=[c]:e.push(
c),r++}}var a=o===r}else var a=!0;if(a)if(t.variables!==void 0){let l=t.variables;const o=r;if(Array.isArray(l)){
const c=r,D=l.length;for(let _=0;_<D;_++){let i=l[_];const u=r;if(i&&typeof i=="object"&&!Array.isArray(i)&&i.
attributes!==void 0){let y=i.attributes;if(y&&typeof y=="object"&&!Array.isArray(y)){let b;if(y.standard_name===
void 0&&(b="standard_name")){const g={};e===null?e=[g]:e.push(g),r++}else if(y.standard_name!==void 0){let g=y.
standard_name;if(!(g==="sea_water_electrical_conductivity"||g==="sea_water_practical_salinity"||g==="sea_water\
_salinity"||g==="sea_water_temperature")){const h={};e===null?e=[h]:e.push(h),r++}}}}var f=u===r;if(f)break}if(f)
r=c,e!==null&&(c?e.length=c:e=null);else{const _={};e===null?e=[_]:e.push(_),r++}}var a=o===r}else var a=!0}var v=T===
r;if(v){const l={};e===null?e=[l]:e.push(l),r++}else r=p,e!==null&&(p?e.length=p:e=null);var s=E===r;return s?
(fe.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),
fe.errors=e,r===0)}fe.evaluated={dynamicProps:!1,dynamicItems:!1};const Ye=oe;function oe(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=oe.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r,
a=r;let f=!1;const v=r;if(t&&typeof t=="object"&&!Array.isArray(t)&&t.variables!==void 0){let u=t.variables;if(Array.
isArray(u)){const y=r,b=u.length;for(let g=0;g<b;g++){let h=u[g];const j=r;if(h&&typeof h=="object"&&!Array.isArray(
h)&&h.attributes!==void 0){let w=h.attributes;const A=r;let k=!1;const B=r;if(w&&typeof w=="object"&&!Array.isArray(
w)){let m;if(w.make_model===void 0&&(m="make_model")){const N={};e===null?e=[N]:e.push(N),r++}}var s=B===r;k=k||
s;const R=r;if(w&&typeof w=="object"&&!Array.isArray(w)){let m;if(w.instrument_make_model===void 0&&(m="instru\
ment_make_model")){const N={};e===null?e=[N]:e.push(N),r++}}var s=R===r;if(k=k||s,k)r=A,e!==null&&(A?e.length=
A:e=null);else{const m={};e===null?e=[m]:e.push(m),r++}}var l=j===r;if(l)break}if(l)r=y,e!==null&&(y?e.length=
y:e=null);else{const g={};e===null?e=[g]:e.push(g),r++}}}var D=v===r;if(f=f||D,D){var o={};o.variables=!0}const P=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let u=t.attributes;const y=r;let b=!1;const g=r;
if(u&&typeof u=="object"&&!Array.isArray(u)){let j;if(u.instrument_make_model===void 0&&(j="instrument_make_mo\
del")){const w={};e===null?e=[w]:e.push(w),r++}}var c=g===r;b=b||c;const h=r;if(u&&typeof u=="object"&&!Array.
isArray(u)){let j;if(u.instrument_model===void 0&&(j="instrument_model")){const w={};e===null?e=[w]:e.push(w),
r++}}var c=h===r;if(b=b||c,b)r=y,e!==null&&(y?e.length=y:e=null);else{const j={};e===null?e=[j]:e.push(j),r++}}
var D=P===r;if(f=f||D,D&&o!==!0&&(o=o||{},o.attributes=!0),f)r=a,e!==null&&(a?e.length=a:e=null);else{const u={};
e===null?e=[u]:e.push(u),r++}var _=T===r;if(_){const u={};e===null?e=[u]:e.push(u),r++}else r=p,e!==null&&(p?e.
length=p:e=null);var i=E===r;return i?(oe.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],
!1):(r=d,e!==null&&(d?e.length=d:e=null),oe.errors=e,r===0)}oe.evaluated={dynamicProps:!1,dynamicItems:!1};const er=ue;function ue(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=ue.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r,
a=r;let f=!1;const v=r;if(t&&typeof t=="object"&&!Array.isArray(t)&&t.variables!==void 0){let i=t.variables;if(Array.
isArray(i)){const u=r,y=i.length;for(let b=0;b<y;b++){let g=i[b];const h=r;if(g&&typeof g=="object"&&!Array.isArray(
g)&&g.attributes!==void 0){let j=g.attributes;const w=r;let A=!1;const k=r;if(j&&typeof j=="object"&&!Array.isArray(
j)){let R;if(j.serial_number===void 0&&(R="serial_number")){const m={};e===null?e=[m]:e.push(m),r++}}var s=k===
r;A=A||s;const B=r;if(j&&typeof j=="object"&&!Array.isArray(j)){let R;if(j.instrument_serial_number===void 0&&
(R="instrument_serial_number")){const m={};e===null?e=[m]:e.push(m),r++}}var s=B===r;if(A=A||s,A)r=w,e!==null&&
(w?e.length=w:e=null);else{const R={};e===null?e=[R]:e.push(R),r++}}var l=h===r;if(l)break}if(l)r=u,e!==null&&
(u?e.length=u:e=null);else{const b={};e===null?e=[b]:e.push(b),r++}}}var c=v===r;if(f=f||c,c){var o={};o.variables=
!0}const P=r;if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let i=t.attributes;if(i&&typeof i==
"object"&&!Array.isArray(i)){let u;if(i.instrument_serial_number===void 0&&(u="instrument_serial_number")){const y={};
e===null?e=[y]:e.push(y),r++}}}var c=P===r;if(f=f||c,c&&o!==!0&&(o=o||{},o.attributes=!0),f)r=a,e!==null&&(a?e.
length=a:e=null);else{const i={};e===null?e=[i]:e.push(i),r++}var D=T===r;if(D){const i={};e===null?e=[i]:e.push(
i),r++}else r=p,e!==null&&(p?e.length=p:e=null);var _=E===r;return _?(ue.errors=[{instancePath:I,schemaPath:"#\
/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),ue.errors=e,r===0)}ue.evaluated={dynamicProps:!1,
dynamicItems:!1};const rr=ce;function ce(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=ce.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r,
a=r;let f=!1;const v=r;if(t&&typeof t=="object"&&!Array.isArray(t)&&t.variables!==void 0){let u=t.variables;if(Array.
isArray(u)){const y=r,b=u.length;for(let g=0;g<b;g++){let h=u[g];const j=r;if(h&&typeof h=="object"&&!Array.isArray(
h)&&h.attributes!==void 0){let w=h.attributes;const A=r;let k=!1;const B=r;if(w&&typeof w=="object"&&!Array.isArray(
w)){let m;if(w.calibration_date===void 0&&(m="calibration_date")){const N={};e===null?e=[N]:e.push(N),r++}}var s=B===
r;k=k||s;const R=r;if(w&&typeof w=="object"&&!Array.isArray(w)){let m;if(w.calibration===void 0&&(m="calibrati\
on")){const N={};e===null?e=[N]:e.push(N),r++}}var s=R===r;if(k=k||s,k)r=A,e!==null&&(A?e.length=A:e=null);else{
const m={};e===null?e=[m]:e.push(m),r++}}var l=j===r;if(l)break}if(l)r=y,e!==null&&(y?e.length=y:e=null);else{
const g={};e===null?e=[g]:e.push(g),r++}}}var D=v===r;if(f=f||D,D){var o={};o.variables=!0}const P=r;if(t&&typeof t==
"object"&&!Array.isArray(t)&&t.attributes!==void 0){let u=t.attributes;const y=r;let b=!1;const g=r;if(u&&typeof u==
"object"&&!Array.isArray(u)){let j;if(u.calibration_date===void 0&&(j="calibration_date")){const w={};e===null?
e=[w]:e.push(w),r++}}var c=g===r;b=b||c;const h=r;if(u&&typeof u=="object"&&!Array.isArray(u)){let j;if(u.instrument_calibration_date===
void 0&&(j="instrument_calibration_date")){const w={};e===null?e=[w]:e.push(w),r++}}var c=h===r;if(b=b||c,b)r=
y,e!==null&&(y?e.length=y:e=null);else{const j={};e===null?e=[j]:e.push(j),r++}}var D=P===r;if(f=f||D,D&&o!==!0&&
(o=o||{},o.attributes=!0),f)r=a,e!==null&&(a?e.length=a:e=null);else{const u={};e===null?e=[u]:e.push(u),r++}var _=T===
r;if(_){const u={};e===null?e=[u]:e.push(u),r++}else r=p,e!==null&&(p?e.length=p:e=null);var i=E===r;return i?
(ce.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),
ce.errors=e,r===0)}ce.evaluated={dynamicProps:!1,dynamicItems:!1};const tr=de;const sr=new RegExp("uncertainty","u"),nr=new RegExp(" standard_error$","u");function de(t,{instancePath:I="",
parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,r=0;const n=de.evaluated;n.
dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;if(t&&typeof t=="object"&&
!Array.isArray(t)&&t.variables!==void 0){let P=t.variables;if(Array.isArray(P)){const c=r,D=P.length;for(let _=0;_<
D;_++){let i=P[_];const u=r,y=r;let b=!1;const g=r;if(i&&typeof i=="object"&&!Array.isArray(i)&&i.attributes!==
void 0){let w=i.attributes;const A=r;let k=!1;const B=r;if(w&&typeof w=="object"&&!Array.isArray(w)){let m;if(w.
accuracy===void 0&&(m="accuracy")){const N={};e===null?e=[N]:e.push(N),r++}}var a=B===r;k=k||a;const R=r;if(w&&
typeof w=="object"&&!Array.isArray(w)){let m;if(w.uncertainty===void 0&&(m="uncertainty")){const N={};e===null?
e=[N]:e.push(N),r++}}var a=R===r;if(k=k||a,k)r=A,e!==null&&(A?e.length=A:e=null);else{const m={};e===null?e=[m]:
e.push(m),r++}}var v=g===r;if(b=b||v,v){var f={};f.attributes=!0}const h=r;if(i&&typeof i=="object"&&!Array.isArray(
i)&&i.name!==void 0){let w=i.name;if(typeof w=="string"&&!sr.test(w)){const A={};e===null?e=[A]:e.push(A),r++}}
var v=h===r;b=b||v,v&&f!==!0&&(f=f||{},f.name=!0);const j=r;if(i&&typeof i=="object"&&!Array.isArray(i)&&i.attributes!==
void 0){let w=i.attributes;if(w&&typeof w=="object"&&!Array.isArray(w)){let A;if(w.standard_name===void 0&&(A=
"standard_name")){const k={};e===null?e=[k]:e.push(k),r++}else if(w.standard_name!==void 0){let k=w.standard_name;
if(typeof k=="string"&&!nr.test(k)){const B={};e===null?e=[B]:e.push(B),r++}}}}var v=j===r;if(b=b||v,v&&f!==!0&&
(f=f||{},f.attributes=!0),b)r=y,e!==null&&(y?e.length=y:e=null);else{const w={};e===null?e=[w]:e.push(w),r++}var s=u===
r;if(s)break}if(s)r=c,e!==null&&(c?e.length=c:e=null);else{const _={};e===null?e=[_]:e.push(_),r++}}}var l=T===
r;if(l){const P={};e===null?e=[P]:e.push(P),r++}else r=p,e!==null&&(p?e.length=p:e=null);var o=E===r;return o?
(de.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),
de.errors=e,r===0)}de.evaluated={dynamicProps:!1,dynamicItems:!1};const ir=pe;function pe(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=pe.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r,
a=r;let f=!1;const v=r;if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let y=t.attributes;
const b=r;let g=!1;const h=r;if(y&&typeof y=="object"&&!Array.isArray(y)){let w;if(y.platform===void 0&&(w="pl\
atform")){const A={};e===null?e=[A]:e.push(A),r++}}var s=h===r;g=g||s;const j=r;if(y&&typeof y=="object"&&!Array.
isArray(y)){let w;if(y.platform_name===void 0&&(w="platform_name")){const A={};e===null?e=[A]:e.push(A),r++}}var s=j===
r;if(g=g||s,g)r=b,e!==null&&(b?e.length=b:e=null);else{const w={};e===null?e=[w]:e.push(w),r++}}var _=v===r;if(f=
f||_,_){var l={};l.attributes=!0}const o=r;if(t&&typeof t=="object"&&!Array.isArray(t)&&t.variables!==void 0){
let y=t.variables;if(Array.isArray(y)){const b=r,g=y.length;for(let h=0;h<g;h++){let j=y[h];const w=r;if(j&&typeof j==
"object"&&!Array.isArray(j)&&j.attributes!==void 0){let A=j.attributes;const k=r;let B=!1;const R=r;if(A&&typeof A==
"object"&&!Array.isArray(A)){let N;if(A.platform===void 0&&(N="platform")){const S={};e===null?e=[S]:e.push(S),
r++}}var P=R===r;B=B||P;const m=r;if(A&&typeof A=="object"&&!Array.isArray(A)){let N;if(A.standard_name===void 0&&
(N="standard_name")){const S={};e===null?e=[S]:e.push(S),r++}else if(A.standard_name!==void 0){let S=A.standard_name;
if(!(S==="platform_name"||S==="platform_id")){const O={};e===null?e=[O]:e.push(O),r++}}}var P=m===r;if(B=B||P,
P){var c={};c.standard_name=!0}if(B)r=k,e!==null&&(k?e.length=k:e=null);else{const N={};e===null?e=[N]:e.push(
N),r++}}var D=w===r;if(D)break}if(D)r=b,e!==null&&(b?e.length=b:e=null);else{const h={};e===null?e=[h]:e.push(
h),r++}}}var _=o===r;if(f=f||_,_&&l!==!0&&(l=l||{},l.variables=!0),f)r=a,e!==null&&(a?e.length=a:e=null);else{
const y={};e===null?e=[y]:e.push(y),r++}var i=T===r;if(i){const y={};e===null?e=[y]:e.push(y),r++}else r=p,e!==
null&&(p?e.length=p:e=null);var u=E===r;return u?(pe.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",
params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),pe.errors=e,r===0)}pe.evaluated={dynamicProps:!1,dynamicItems:!1};
const lr=ye;function ye(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=ye.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let s=t.attributes;const l=r;let o=!1;const P=r;
if(s&&typeof s=="object"&&!Array.isArray(s)){let _;if(s.creator_email===void 0&&(_="creator_email")){const i={};
e===null?e=[i]:e.push(i),r++}}var a=P===r;o=o||a;const c=r;if(s&&typeof s=="object"&&!Array.isArray(s)){let _;
if(s.publisher_email===void 0&&(_="publisher_email")){const i={};e===null?e=[i]:e.push(i),r++}}var a=c===r;o=o||
a;const D=r;if(s&&typeof s=="object"&&!Array.isArray(s)){let _;if(s.contact===void 0&&(_="contact")){const i={};
e===null?e=[i]:e.push(i),r++}}var a=D===r;if(o=o||a,o)r=l,e!==null&&(l?e.length=l:e=null);else{const _={};e===
null?e=[_]:e.push(_),r++}}var f=T===r;if(f){const s={};e===null?e=[s]:e.push(s),r++}else r=p,e!==null&&(p?e.length=
p:e=null);var v=E===r;return v?(ye.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=
d,e!==null&&(d?e.length=d:e=null),ye.errors=e,r===0)}ye.evaluated={dynamicProps:!1,dynamicItems:!1};const ar=me;function me(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=me.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let s=t.attributes;const l=r;let o=!1;const P=r;
if(s&&typeof s=="object"&&!Array.isArray(s)){let _;if(s.history===void 0&&(_="history")){const i={};e===null?e=
[i]:e.push(i),r++}}var a=P===r;o=o||a;const c=r;if(s&&typeof s=="object"&&!Array.isArray(s)){let _;if(s.processing_level===
void 0&&(_="processing_level")){const i={};e===null?e=[i]:e.push(i),r++}}var a=c===r;o=o||a;const D=r;if(s&&typeof s==
"object"&&!Array.isArray(s)){let _;if(s.processing===void 0&&(_="processing")){const i={};e===null?e=[i]:e.push(
i),r++}}var a=D===r;if(o=o||a,o)r=l,e!==null&&(l?e.length=l:e=null);else{const _={};e===null?e=[_]:e.push(_),r++}}
var f=T===r;if(f){const s={};e===null?e=[s]:e.push(s),r++}else r=p,e!==null&&(p?e.length=p:e=null);var v=E===r;
return v?(me.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=
d:e=null),me.errors=e,r===0)}me.evaluated={dynamicProps:!1,dynamicItems:!1};const fr=_e;function _e(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=_e.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let s=t.attributes;const l=r;let o=!1;const P=r;
if(s&&typeof s=="object"&&!Array.isArray(s)){let D;if(s.license===void 0&&(D="license")){const _={};e===null?e=
[_]:e.push(_),r++}}var a=P===r;o=o||a;const c=r;if(s&&typeof s=="object"&&!Array.isArray(s)){let D;if(s.licence===
void 0&&(D="licence")){const _={};e===null?e=[_]:e.push(_),r++}}var a=c===r;if(o=o||a,o)r=l,e!==null&&(l?e.length=
l:e=null);else{const D={};e===null?e=[D]:e.push(D),r++}}var f=T===r;if(f){const s={};e===null?e=[s]:e.push(s),
r++}else r=p,e!==null&&(p?e.length=p:e=null);var v=E===r;return v?(_e.errors=[{instancePath:I,schemaPath:"#/no\
t",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),_e.errors=e,r===0)}_e.evaluated={dynamicProps:!1,
dynamicItems:!1};const or=ve;function ve(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=ve.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)){if(t.role!==void 0){const s=r;if(t.role!=="data"){const l={};e===
null?e=[l]:e.push(l),r++}var a=s===r}else var a=!0;if(a){if(t.ancillary!==void 0){const s=r;if(t.ancillary!==!1){
const o={};e===null?e=[o]:e.push(o),r++}var a=s===r}else var a=!0;if(a)if(t.attributes!==void 0){let s=t.attributes;
const l=r;if(s&&typeof s=="object"&&!Array.isArray(s)){let P;if(s.standard_name===void 0&&(P="standard_name")){
const c={};e===null?e=[c]:e.push(c),r++}else if(s.standard_name!==void 0){let c=s.standard_name;if(!(c==="sea_\
water_practical_salinity"||c==="sea_water_absolute_salinity"||c==="sea_water_density"||c==="sea_water_sigma_t"||
c==="sea_water_sigma_theta"||c==="sea_water_potential_temperature"||c==="sea_water_conservative_temperature"||
c==="speed_of_sound_in_sea_water")){const D={};e===null?e=[D]:e.push(D),r++}}}var a=l===r}else var a=!0}}var f=T===
r;if(f){const s={};e===null?e=[s]:e.push(s),r++}else r=p,e!==null&&(p?e.length=p:e=null);var v=E===r;return v?
(ve.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),
ve.errors=e,r===0)}ve.evaluated={dynamicProps:!1,dynamicItems:!1};const ur=he;function he(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=he.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let s=t.attributes;const l=r;let o=!1;const P=r;
if(s&&typeof s=="object"&&!Array.isArray(s)){let u;if(s.source===void 0&&(u="source")){const y={};e===null?e=[
y]:e.push(y),r++}}var a=P===r;o=o||a;const c=r;if(s&&typeof s=="object"&&!Array.isArray(s)){let u;if(s.references===
void 0&&(u="references")){const y={};e===null?e=[y]:e.push(y),r++}}var a=c===r;o=o||a;const D=r;if(s&&typeof s==
"object"&&!Array.isArray(s)){let u;if(s.comment===void 0&&(u="comment")){const y={};e===null?e=[y]:e.push(y),r++}}
var a=D===r;o=o||a;const _=r;if(s&&typeof s=="object"&&!Array.isArray(s)){let u;if(s.equation===void 0&&(u="eq\
uation")){const y={};e===null?e=[y]:e.push(y),r++}}var a=_===r;o=o||a;const i=r;if(s&&typeof s=="object"&&!Array.
isArray(s)){let u;if(s.method===void 0&&(u="method")){const y={};e===null?e=[y]:e.push(y),r++}}var a=i===r;if(o=
o||a,o)r=l,e!==null&&(l?e.length=l:e=null);else{const u={};e===null?e=[u]:e.push(u),r++}}var f=T===r;if(f){const s={};
e===null?e=[s]:e.push(s),r++}else r=p,e!==null&&(p?e.length=p:e=null);var v=E===r;return v?(he.errors=[{instancePath:I,
schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),he.errors=e,r===0)}he.evaluated=
{dynamicProps:!1,dynamicItems:!1};const cr=be;const dr=new RegExp("\\bmean\\b","u");function be(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,
dynamicAnchors:M={}}={}){let e=null,r=0;const n=be.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&
(n.items=void 0);const d=r,E=r,p=r,T=r,a=r,f=r;if(t&&typeof t=="object"&&!Array.isArray(t)&&t.variables!==void 0){
let P=t.variables;if(Array.isArray(P)){const c=r,D=P.length;for(let _=0;_<D;_++){let i=P[_];const u=r;if(i&&typeof i==
"object"&&!Array.isArray(i)&&i.attributes!==void 0){let y=i.attributes;if(y&&typeof y=="object"&&!Array.isArray(
y)){let b;if(y.cell_methods===void 0&&(b="cell_methods")){const g={};e===null?e=[g]:e.push(g),r++}else if(y.cell_methods!==
void 0){let g=y.cell_methods;if(r===r)if(typeof g=="string"){if(!dr.test(g)){const j={};e===null?e=[j]:e.push(
j),r++}}else{const j={};e===null?e=[j]:e.push(j),r++}}}}var v=u===r;if(v)break}if(v)r=c,e!==null&&(c?e.length=
c:e=null);else{const _={};e===null?e=[_]:e.push(_),r++}}}var s=f===r;if(s){const P={};e===null?e=[P]:e.push(P),
r++}else r=a,e!==null&&(a?e.length=a:e=null);var l=T===r;if(l){const P={};e===null?e=[P]:e.push(P),r++}else r=
p,e!==null&&(p?e.length=p:e=null);var o=E===r;return o?(be.errors=[{instancePath:I,schemaPath:"#/not",keyword:"\
not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),be.errors=e,r===0)}be.evaluated={dynamicProps:!1,dynamicItems:!1};
const pr=ge;const te=new RegExp("([Ss]ampl|[Rr]ecord|[Ll]ogg)[a-z]* (rate|interval|frequency|every)|\\bHz\\b|scans per secon\
d","u"),yr=new RegExp("^(s|sec|seconds?|min|minutes?|ms|milliseconds?)$","u");function ge(t,{instancePath:I="",
parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,r=0;const n=ge.evaluated;n.
dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r,a=r;let f=!1;const v=r;if(t&&
typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let m=t.attributes;const N=r;let S=!1;const O=r;
if(m&&typeof m=="object"&&!Array.isArray(m)){let F;if(m.sampling_rate===void 0&&(F="sampling_rate")){const J={};
e===null?e=[J]:e.push(J),r++}}var s=O===r;S=S||s;const q=r;if(m&&typeof m=="object"&&!Array.isArray(m)){let F;
if(m.sampling_interval===void 0&&(F="sampling_interval")){const J={};e===null?e=[J]:e.push(J),r++}}var s=q===r;
S=S||s;const C=r;if(m&&typeof m=="object"&&!Array.isArray(m)){let F;if(m.sampling_frequency===void 0&&(F="samp\
ling_frequency")){const J={};e===null?e=[J]:e.push(J),r++}}var s=C===r;S=S||s;const U=r;if(m&&typeof m=="objec\
t"&&!Array.isArray(m)){let F;if(m.sample_interval===void 0&&(F="sample_interval")){const J={};e===null?e=[J]:e.
push(J),r++}}var s=U===r;S=S||s;const z=r;if(m&&typeof m=="object"&&!Array.isArray(m)){let F;if(m.recording_rate===
void 0&&(F="recording_rate")){const J={};e===null?e=[J]:e.push(J),r++}}var s=z===r;S=S||s;const Z=r;if(m&&typeof m==
"object"&&!Array.isArray(m)){let F;if(m.time_coverage_resolution===void 0&&(F="time_coverage_resolution")){const J={};
e===null?e=[J]:e.push(J),r++}}var s=Z===r;if(S=S||s,S)r=N,e!==null&&(N?e.length=N:e=null);else{const F={};e===
null?e=[F]:e.push(F),r++}}var k=v===r;if(f=f||k,k){var l={};l.attributes=!0}const o=r;if(t&&typeof t=="object"&&
!Array.isArray(t)&&t.attributes!==void 0){let m=t.attributes;if(m&&typeof m=="object"&&!Array.isArray(m)){let N;
if(m.comment===void 0&&(N="comment")){const S={};e===null?e=[S]:e.push(S),r++}else if(m.comment!==void 0){let S=m.
comment;if(r===r)if(typeof S=="string"){if(!te.test(S)){const q={};e===null?e=[q]:e.push(q),r++}}else{const q={};
e===null?e=[q]:e.push(q),r++}}}}var k=o===r;f=f||k,k&&l!==!0&&(l=l||{},l.attributes=!0);const P=r;if(t&&typeof t==
"object"&&!Array.isArray(t)&&t.attributes!==void 0){let m=t.attributes;if(m&&typeof m=="object"&&!Array.isArray(
m)){let N;if(m.source===void 0&&(N="source")){const S={};e===null?e=[S]:e.push(S),r++}else if(m.source!==void 0){
let S=m.source;if(r===r)if(typeof S=="string"){if(!te.test(S)){const q={};e===null?e=[q]:e.push(q),r++}}else{const q={};
e===null?e=[q]:e.push(q),r++}}}}var k=P===r;f=f||k,k&&l!==!0&&(l=l||{},l.attributes=!0);const c=r;if(t&&typeof t==
"object"&&!Array.isArray(t)&&t.attributes!==void 0){let m=t.attributes;if(m&&typeof m=="object"&&!Array.isArray(
m)){let N;if(m.history===void 0&&(N="history")){const S={};e===null?e=[S]:e.push(S),r++}else if(m.history!==void 0){
let S=m.history;if(r===r)if(typeof S=="string"){if(!te.test(S)){const q={};e===null?e=[q]:e.push(q),r++}}else{
const q={};e===null?e=[q]:e.push(q),r++}}}}var k=c===r;f=f||k,k&&l!==!0&&(l=l||{},l.attributes=!0);const D=r;if(t&&
typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let m=t.attributes;if(m&&typeof m=="object"&&!Array.
isArray(m)){let N;if(m.summary===void 0&&(N="summary")){const S={};e===null?e=[S]:e.push(S),r++}else if(m.summary!==
void 0){let S=m.summary;if(r===r)if(typeof S=="string"){if(!te.test(S)){const q={};e===null?e=[q]:e.push(q),r++}}else{
const q={};e===null?e=[q]:e.push(q),r++}}}}var k=D===r;f=f||k,k&&l!==!0&&(l=l||{},l.attributes=!0);const _=r;if(t&&
typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let m=t.attributes;if(m&&typeof m=="object"&&!Array.
isArray(m)){let N;if(m.sampling===void 0&&(N="sampling")){const S={};e===null?e=[S]:e.push(S),r++}else if(m.sampling!==
void 0){let S=m.sampling;if(r===r)if(typeof S=="string"){if(!te.test(S)){const q={};e===null?e=[q]:e.push(q),r++}}else{
const q={};e===null?e=[q]:e.push(q),r++}}}}var k=_===r;f=f||k,k&&l!==!0&&(l=l||{},l.attributes=!0);const i=r;if(t&&
typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let m=t.attributes;if(m&&typeof m=="object"&&!Array.
isArray(m)){let N;if(m.instrument===void 0&&(N="instrument")){const S={};e===null?e=[S]:e.push(S),r++}else if(m.
instrument!==void 0){let S=m.instrument;if(r===r)if(typeof S=="string"){if(!te.test(S)){const q={};e===null?e=
[q]:e.push(q),r++}}else{const q={};e===null?e=[q]:e.push(q),r++}}}}var k=i===r;f=f||k,k&&l!==!0&&(l=l||{},l.attributes=
!0);const u=r;if(t&&typeof t=="object"&&!Array.isArray(t)&&t.variables!==void 0){let m=t.variables;if(Array.isArray(
m)){const N=r,S=m.length;for(let O=0;O<S;O++){let q=m[O];const C=r,U=r;let z=!1;const Z=r;if(q&&typeof q=="obj\
ect"&&!Array.isArray(q)&&q.attributes!==void 0){let x=q.attributes;const V=r;let G=!1;const ee=r;if(x&&typeof x==
"object"&&!Array.isArray(x)){let Q;if(x.sampling_rate===void 0&&(Q="sampling_rate")){const Y={};e===null?e=[Y]:
e.push(Y),r++}}var y=ee===r;G=G||y;const K=r;if(x&&typeof x=="object"&&!Array.isArray(x)){let Q;if(x.sampling_interval===
void 0&&(Q="sampling_interval")){const Y={};e===null?e=[Y]:e.push(Y),r++}}var y=K===r;G=G||y;const W=r;if(x&&typeof x==
"object"&&!Array.isArray(x)){let Q;if(x.sampling_frequency===void 0&&(Q="sampling_frequency")){const Y={};e===
null?e=[Y]:e.push(Y),r++}}var y=W===r;G=G||y;const se=r;if(x&&typeof x=="object"&&!Array.isArray(x)){let Q;if(x.
sample_interval===void 0&&(Q="sample_interval")){const Y={};e===null?e=[Y]:e.push(Y),r++}}var y=se===r;G=G||y;
const ne=r;if(x&&typeof x=="object"&&!Array.isArray(x)){let Q;if(x.recording_rate===void 0&&(Q="recording_rate")){
const Y={};e===null?e=[Y]:e.push(Y),r++}}var y=ne===r;if(G=G||y,G)r=V,e!==null&&(V?e.length=V:e=null);else{const Q={};
e===null?e=[Q]:e.push(Q),r++}}var g=Z===r;if(z=z||g,g){var b={};b.attributes=!0}const F=r;if(q&&typeof q=="obj\
ect"&&!Array.isArray(q)&&q.attributes!==void 0){let x=q.attributes;if(x&&typeof x=="object"&&!Array.isArray(x)){
let V;if(x.comment===void 0&&(V="comment")){const G={};e===null?e=[G]:e.push(G),r++}else if(x.comment!==void 0){
let G=x.comment;if(r===r)if(typeof G=="string"){if(!te.test(G)){const K={};e===null?e=[K]:e.push(K),r++}}else{
const K={};e===null?e=[K]:e.push(K),r++}}}}var g=F===r;z=z||g,g&&b!==!0&&(b=b||{},b.attributes=!0);const J=r;if(q&&
typeof q=="object"&&!Array.isArray(q)&&q.attributes!==void 0){let x=q.attributes;if(x&&typeof x=="object"&&!Array.
isArray(x)){let V;if(x.sampling===void 0&&(V="sampling")){const G={};e===null?e=[G]:e.push(G),r++}else if(x.sampling!==
void 0){let G=x.sampling;if(r===r)if(typeof G=="string"){if(!te.test(G)){const K={};e===null?e=[K]:e.push(K),r++}}else{
const K={};e===null?e=[K]:e.push(K),r++}}}}var g=J===r;z=z||g,g&&b!==!0&&(b=b||{},b.attributes=!0);const X=r;if(q&&
typeof q=="object"&&!Array.isArray(q)&&q.attributes!==void 0){let x=q.attributes;if(x&&typeof x=="object"&&!Array.
isArray(x)){let V;if(x.long_name===void 0&&(V="long_name")){const G={};e===null?e=[G]:e.push(G),r++}else if(x.
long_name!==void 0){let G=x.long_name;if(r===r)if(typeof G=="string"){if(!te.test(G)){const K={};e===null?e=[K]:
e.push(K),r++}}else{const K={};e===null?e=[K]:e.push(K),r++}}}}var g=X===r;z=z||g,g&&b!==!0&&(b=b||{},b.attributes=
!0);const Qe=r;if(q&&typeof q=="object"&&!Array.isArray(q)&&q.attributes!==void 0){let x=q.attributes;if(x&&typeof x==
"object"&&!Array.isArray(x)){let V;if(x.units===void 0&&(V="units")){const G={};e===null?e=[G]:e.push(G),r++}else if(x.
units!==void 0){let G=x.units;if(r===r)if(typeof G=="string"){if(!yr.test(G)){const K={};e===null?e=[K]:e.push(
K),r++}}else{const K={};e===null?e=[K]:e.push(K),r++}}}}var g=Qe===r;if(z=z||g,g&&b!==!0&&(b=b||{},b.attributes=
!0),z)r=U,e!==null&&(U?e.length=U:e=null);else{const x={};e===null?e=[x]:e.push(x),r++}var h=C===r;if(h)break}
if(h)r=N,e!==null&&(N?e.length=N:e=null);else{const O={};e===null?e=[O]:e.push(O),r++}}}var k=u===r;f=f||k,k&&
l!==!0&&(l=l||{},l.variables=!0);const j=r;if(t&&typeof t=="object"&&!Array.isArray(t)&&t.variables!==void 0){
let m=t.variables;if(Array.isArray(m)){const N=r,S=m.length;for(let O=0;O<S;O++){let q=m[O];const C=r;if(q&&typeof q==
"object"&&!Array.isArray(q)){let U;if(q.axis===void 0&&(U="axis")||q.role===void 0&&(U="role")){const z={};e===
null?e=[z]:e.push(z),r++}else{if(q.axis!==void 0){const z=r;if(q.axis!=="T"){const Z={};e===null?e=[Z]:e.push(
Z),r++}var w=z===r}else var w=!0;if(w)if(q.role!==void 0){const z=r;if(q.role!=="coordinate"){const F={};e===null?
e=[F]:e.push(F),r++}var w=z===r}else var w=!0}}var A=C===r;if(A)break}if(A)r=N,e!==null&&(N?e.length=N:e=null);else{
const O={};e===null?e=[O]:e.push(O),r++}}}var k=j===r;if(f=f||k,k&&l!==!0&&(l=l||{},l.variables=!0),f)r=a,e!==
null&&(a?e.length=a:e=null);else{const m={};e===null?e=[m]:e.push(m),r++}var B=T===r;if(B){const m={};e===null?
e=[m]:e.push(m),r++}else r=p,e!==null&&(p?e.length=p:e=null);var R=E===r;return R?(ge.errors=[{instancePath:I,
schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),ge.errors=e,r===0)}ge.evaluated=
{dynamicProps:!1,dynamicItems:!1};const mr=Ae;function Ae(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=Ae.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)){if(t.axis!==void 0){const s=r;if(t.axis!=="T"){const l={};e===null?
e=[l]:e.push(l),r++}var a=s===r}else var a=!0;if(a){if(t.dimensions!==void 0){let s=t.dimensions;const l=r;if(Array.
isArray(s)&&s.length>1){const P={};e===null?e=[P]:e.push(P),r++}var a=l===r}else var a=!0;if(a){if(t.attributes!==
void 0){let s=t.attributes;const l=r;if(s&&typeof s=="object"&&!Array.isArray(s)){let P;if(s.standard_name===void 0&&
(P="standard_name")){const c={};e===null?e=[c]:e.push(c),r++}else if(s.standard_name!==void 0&&s.standard_name!==
"time"){const c={};e===null?e=[c]:e.push(c),r++}}var a=l===r}else var a=!0;if(a)if(t.role!==void 0){const s=r;
if(t.role!=="auxiliary"){const o={};e===null?e=[o]:e.push(o),r++}var a=s===r}else var a=!0}}}var f=T===r;if(f){
const s={};e===null?e=[s]:e.push(s),r++}else r=p,e!==null&&(p?e.length=p:e=null);var v=E===r;return v?(Ae.errors=
[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),Ae.errors=
e,r===0)}Ae.evaluated={dynamicProps:!1,dynamicItems:!1};const _r=je;const Ue=new RegExp("([Ss]tart|[Bb]egin|[Ff]irst|[Bb]ottom|[Dd]eepest|[Ee]nd|[Ll]ast|[Mm]id|[Dd]own)","u");function je(t,{
instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,r=0;const n=je.
evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r,a=r;let f=!1;
const v=r;if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let _=t.attributes;if(_&&typeof _==
"object"&&!Array.isArray(_)){let i;if(_.long_name===void 0&&(i="long_name")){const u={};e===null?e=[u]:e.push(
u),r++}else if(_.long_name!==void 0){let u=_.long_name;if(r===r)if(typeof u=="string"){if(!Ue.test(u)){const b={};
e===null?e=[b]:e.push(b),r++}}else{const b={};e===null?e=[b]:e.push(b),r++}}}}var P=v===r;if(f=f||P,P){var s={};
s.attributes=!0}const l=r;if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let _=t.attributes;
if(_&&typeof _=="object"&&!Array.isArray(_)){let i;if(_.comment===void 0&&(i="comment")){const u={};e===null?e=
[u]:e.push(u),r++}else if(_.comment!==void 0){let u=_.comment;if(r===r)if(typeof u=="string"){if(!Ue.test(u)){
const b={};e===null?e=[b]:e.push(b),r++}}else{const b={};e===null?e=[b]:e.push(b),r++}}}}var P=l===r;f=f||P,P&&
s!==!0&&(s=s||{},s.attributes=!0);const o=r;if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){
let _=t.attributes;if(_&&typeof _=="object"&&!Array.isArray(_)){let i;if(_.description===void 0&&(i="descripti\
on")){const u={};e===null?e=[u]:e.push(u),r++}else if(_.description!==void 0){let u=_.description;if(r===r)if(typeof u==
"string"){if(!Ue.test(u)){const b={};e===null?e=[b]:e.push(b),r++}}else{const b={};e===null?e=[b]:e.push(b),r++}}}}
var P=o===r;if(f=f||P,P&&s!==!0&&(s=s||{},s.attributes=!0),f)r=a,e!==null&&(a?e.length=a:e=null);else{const _={};
e===null?e=[_]:e.push(_),r++}var c=T===r;if(c){const _={};e===null?e=[_]:e.push(_),r++}else r=p,e!==null&&(p?e.
length=p:e=null);var D=E===r;return D?(je.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],
!1):(r=d,e!==null&&(d?e.length=d:e=null),je.errors=e,r===0)}je.evaluated={dynamicProps:!1,dynamicItems:!1};const vr=Pe;const Ze=new RegExp("(GPS|GNSS|[Ss]atellite|[Ff]ix(es|ed)?\\b|[Pp]ositioning|[Nn]avigation|chart)","u"),Ke=new RegExp(
"(GPS|GNSS|[Ss]atellite|[Ff]ix(es|ed)?\\b|[Pp]ositioning|[Nn]avigation|chart|[Pp]ier)","u"),hr=new RegExp("[Pp\
][Oo][Ss][Ii][Tt][Ii][Oo][Nn][Ii][Nn][Gg]","u");function Pe(t,{instancePath:I="",parentData:$,parentDataProperty:L,
rootData:H=t,dynamicAnchors:M={}}={}){let e=null,r=0;const n=Pe.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&
(n.items=void 0);const d=r,E=r,p=r,T=r,a=r;let f=!1;const v=r;if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==
void 0){let g=t.attributes;if(g&&typeof g=="object"&&!Array.isArray(g)){let h;if(g.comment===void 0&&(h="comme\
nt")){const j={};e===null?e=[j]:e.push(j),r++}else if(g.comment!==void 0){let j=g.comment;if(r===r)if(typeof j==
"string"){if(!Ze.test(j)){const A={};e===null?e=[A]:e.push(A),r++}}else{const A={};e===null?e=[A]:e.push(A),r++}}}}
var u=v===r;if(f=f||u,u){var s={};s.attributes=!0}const l=r;if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==
void 0){let g=t.attributes;if(g&&typeof g=="object"&&!Array.isArray(g)){let h;if(g.source===void 0&&(h="source")){
const j={};e===null?e=[j]:e.push(j),r++}else if(g.source!==void 0){let j=g.source;if(r===r)if(typeof j=="strin\
g"){if(!Ze.test(j)){const A={};e===null?e=[A]:e.push(A),r++}}else{const A={};e===null?e=[A]:e.push(A),r++}}}}var u=l===
r;f=f||u,u&&s!==!0&&(s=s||{},s.attributes=!0);const o=r;if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==
void 0){let g=t.attributes;if(g&&typeof g=="object"&&!Array.isArray(g)){let h;if(g.summary===void 0&&(h="summa\
ry")){const j={};e===null?e=[j]:e.push(j),r++}else if(g.summary!==void 0){let j=g.summary;if(r===r)if(typeof j==
"string"){if(!Ze.test(j)){const A={};e===null?e=[A]:e.push(A),r++}}else{const A={};e===null?e=[A]:e.push(A),r++}}}}
var u=o===r;f=f||u,u&&s!==!0&&(s=s||{},s.attributes=!0);const P=r;if(t&&typeof t=="object"&&!Array.isArray(t)&&
t.variables!==void 0){let g=t.variables;if(Array.isArray(g)){const h=r,j=g.length;for(let w=0;w<j;w++){let A=g[w];
const k=r,B=r;let R=!1;const m=r;if(A&&typeof A=="object"&&!Array.isArray(A)&&A.attributes!==void 0){let C=A.attributes;
if(C&&typeof C=="object"&&!Array.isArray(C)){let U;if(C.long_name===void 0&&(U="long_name")){const z={};e===null?
e=[z]:e.push(z),r++}else if(C.long_name!==void 0){let z=C.long_name;if(r===r)if(typeof z=="string"){if(!Ke.test(
z)){const F={};e===null?e=[F]:e.push(F),r++}}else{const F={};e===null?e=[F]:e.push(F),r++}}}}var _=m===r;if(R=
R||_,_){var c={};c.attributes=!0}const N=r;if(A&&typeof A=="object"&&!Array.isArray(A)&&A.attributes!==void 0){
let C=A.attributes;if(C&&typeof C=="object"&&!Array.isArray(C)){let U;if(C.comment===void 0&&(U="comment")){const z={};
e===null?e=[z]:e.push(z),r++}else if(C.comment!==void 0){let z=C.comment;if(r===r)if(typeof z=="string"){if(!Ke.
test(z)){const F={};e===null?e=[F]:e.push(F),r++}}else{const F={};e===null?e=[F]:e.push(F),r++}}}}var _=N===r;
R=R||_,_&&c!==!0&&(c=c||{},c.attributes=!0);const S=r;if(A&&typeof A=="object"&&!Array.isArray(A)&&A.attributes!==
void 0){let C=A.attributes;if(C&&typeof C=="object"&&!Array.isArray(C)){let U;if(C.source===void 0&&(U="source")){
const z={};e===null?e=[z]:e.push(z),r++}else if(C.source!==void 0){let z=C.source;if(r===r)if(typeof z=="strin\
g"){if(!Ke.test(z)){const F={};e===null?e=[F]:e.push(F),r++}}else{const F={};e===null?e=[F]:e.push(F),r++}}}}var _=S===
r;R=R||_,_&&c!==!0&&(c=c||{},c.attributes=!0);const O=r;if(A&&typeof A=="object"&&!Array.isArray(A)&&A.attributes!==
void 0){let C=A.attributes;const U=r;let z=!1;const Z=r;if(C&&typeof C=="object"&&!Array.isArray(C)){let J;if(C.
positioning_system===void 0&&(J="positioning_system")){const X={};e===null?e=[X]:e.push(X),r++}}var D=Z===r;z=
z||D;const F=r;if(C&&typeof C=="object"&&!Array.isArray(C)){let J;if(C.position_method===void 0&&(J="position_\
method")){const X={};e===null?e=[X]:e.push(X),r++}}var D=F===r;if(z=z||D,z)r=U,e!==null&&(U?e.length=U:e=null);else{
const J={};e===null?e=[J]:e.push(J),r++}}var _=O===r;R=R||_,_&&c!==!0&&(c=c||{},c.attributes=!0);const q=r;if(A&&
typeof A=="object"&&!Array.isArray(A)&&A.name!==void 0){let C=A.name;if(typeof C=="string"&&!hr.test(C)){const U={};
e===null?e=[U]:e.push(U),r++}}var _=q===r;if(R=R||_,_&&c!==!0&&(c=c||{},c.name=!0),R)r=B,e!==null&&(B?e.length=
B:e=null);else{const C={};e===null?e=[C]:e.push(C),r++}var i=k===r;if(i)break}if(i)r=h,e!==null&&(h?e.length=h:
e=null);else{const w={};e===null?e=[w]:e.push(w),r++}}}var u=P===r;if(f=f||u,u&&s!==!0&&(s=s||{},s.variables=!0),
f)r=a,e!==null&&(a?e.length=a:e=null);else{const g={};e===null?e=[g]:e.push(g),r++}var y=T===r;if(y){const g={};
e===null?e=[g]:e.push(g),r++}else r=p,e!==null&&(p?e.length=p:e=null);var b=E===r;return b?(Pe.errors=[{instancePath:I,
schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),Pe.errors=e,r===0)}Pe.evaluated=
{dynamicProps:!1,dynamicItems:!1};const br=De;function De(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=De.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let s=t.attributes;const l=r;let o=!1;const P=r;
if(s&&typeof s=="object"&&!Array.isArray(s)){let u;if(s.creator_name===void 0&&(u="creator_name")){const y={};
e===null?e=[y]:e.push(y),r++}}var a=P===r;o=o||a;const c=r;if(s&&typeof s=="object"&&!Array.isArray(s)){let u;
if(s.contributor_name===void 0&&(u="contributor_name")){const y={};e===null?e=[y]:e.push(y),r++}}var a=c===r;o=
o||a;const D=r;if(s&&typeof s=="object"&&!Array.isArray(s)){let u;if(s.principal_investigator===void 0&&(u="pr\
incipal_investigator")){const y={};e===null?e=[y]:e.push(y),r++}}var a=D===r;o=o||a;const _=r;if(s&&typeof s==
"object"&&!Array.isArray(s)){let u;if(s.pi_name===void 0&&(u="pi_name")){const y={};e===null?e=[y]:e.push(y),r++}}
var a=_===r;o=o||a;const i=r;if(s&&typeof s=="object"&&!Array.isArray(s)){let u;if(s.PI_NAME===void 0&&(u="PI_\
NAME")){const y={};e===null?e=[y]:e.push(y),r++}}var a=i===r;if(o=o||a,o)r=l,e!==null&&(l?e.length=l:e=null);else{
const u={};e===null?e=[u]:e.push(u),r++}}var f=T===r;if(f){const s={};e===null?e=[s]:e.push(s),r++}else r=p,e!==
null&&(p?e.length=p:e=null);var v=E===r;return v?(De.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",
params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),De.errors=e,r===0)}De.evaluated={dynamicProps:!1,dynamicItems:!1};
const gr=qe;const Ar=new RegExp("([Cc]ruise|CRUISE|[Ee]xpocode|PROJECT)","u");function qe(t,{instancePath:I="",parentData:$,
parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,r=0;const n=qe.evaluated;n.dynamicProps&&
(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r,a=r;let f=!1;const v=r;if(t&&typeof t==
"object"&&!Array.isArray(t)&&t.attributes!==void 0){let i=t.attributes;const u=r;let y=!1;const b=r;if(i&&typeof i==
"object"&&!Array.isArray(i)){let R;if(i.project===void 0&&(R="project")){const m={};e===null?e=[m]:e.push(m),r++}}
var s=b===r;y=y||s;const g=r;if(i&&typeof i=="object"&&!Array.isArray(i)){let R;if(i.program===void 0&&(R="pro\
gram")){const m={};e===null?e=[m]:e.push(m),r++}}var s=g===r;y=y||s;const h=r;if(i&&typeof i=="object"&&!Array.
isArray(i)){let R;if(i.cruise===void 0&&(R="cruise")){const m={};e===null?e=[m]:e.push(m),r++}}var s=h===r;y=y||
s;const j=r;if(i&&typeof i=="object"&&!Array.isArray(i)){let R;if(i.cruise_id===void 0&&(R="cruise_id")){const m={};
e===null?e=[m]:e.push(m),r++}}var s=j===r;y=y||s;const w=r;if(i&&typeof i=="object"&&!Array.isArray(i)){let R;
if(i.cruise_name===void 0&&(R="cruise_name")){const m={};e===null?e=[m]:e.push(m),r++}}var s=w===r;y=y||s;const A=r;
if(i&&typeof i=="object"&&!Array.isArray(i)){let R;if(i.survey===void 0&&(R="survey")){const m={};e===null?e=[
m]:e.push(m),r++}}var s=A===r;y=y||s;const k=r;if(i&&typeof i=="object"&&!Array.isArray(i)){let R;if(i.expocode===
void 0&&(R="expocode")){const m={};e===null?e=[m]:e.push(m),r++}}var s=k===r;y=y||s;const B=r;if(i&&typeof i==
"object"&&!Array.isArray(i)){let R;if(i.project_name===void 0&&(R="project_name")){const m={};e===null?e=[m]:e.
push(m),r++}}var s=B===r;if(y=y||s,y)r=u,e!==null&&(u?e.length=u:e=null);else{const R={};e===null?e=[R]:e.push(
R),r++}}var c=v===r;if(f=f||c,c){var l={};l.attributes=!0}const o=r;if(t&&typeof t=="object"&&!Array.isArray(t)&&
t.variables!==void 0){let i=t.variables;if(Array.isArray(i)){const u=r,y=i.length;for(let b=0;b<y;b++){let g=i[b];
const h=r;if(g&&typeof g=="object"&&!Array.isArray(g)&&g.name!==void 0){let j=g.name;if(typeof j=="string"&&!Ar.
test(j)){const w={};e===null?e=[w]:e.push(w),r++}}var P=h===r;if(P)break}if(P)r=u,e!==null&&(u?e.length=u:e=null);else{
const b={};e===null?e=[b]:e.push(b),r++}}}var c=o===r;if(f=f||c,c&&l!==!0&&(l=l||{},l.variables=!0),f)r=a,e!==
null&&(a?e.length=a:e=null);else{const i={};e===null?e=[i]:e.push(i),r++}var D=T===r;if(D){const i={};e===null?
e=[i]:e.push(i),r++}else r=p,e!==null&&(p?e.length=p:e=null);var _=E===r;return _?(qe.errors=[{instancePath:I,
schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),qe.errors=e,r===0)}qe.evaluated=
{dynamicProps:!1,dynamicItems:!1};const jr=we;function we(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=we.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let v=t.attributes;if(v&&typeof v=="object"&&
!Array.isArray(v)){let s;if(v.ncei_template_version===void 0&&(s="ncei_template_version")){const l={};e===null?
e=[l]:e.push(l),r++}}}var a=T===r;if(a){const v={};e===null?e=[v]:e.push(v),r++}else r=p,e!==null&&(p?e.length=
p:e=null);var f=E===r;return f?(we.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=
d,e!==null&&(d?e.length=d:e=null),we.errors=e,r===0)}we.evaluated={dynamicProps:!1,dynamicItems:!1};const Pr=Ie;const Dr=new RegExp("^NCEI_NetCDF_[A-Za-z]+(_Orthogonal|_Incomplete)?_Template_v[0-9]+\\.[0-9]+$","u");function Ie(t,{
instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,r=0;const n=Ie.
evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;if(t&&typeof t==
"object"&&!Array.isArray(t)&&t.attributes!==void 0){let v=t.attributes;if(v&&typeof v=="object"&&!Array.isArray(
v)&&v.ncei_template_version!==void 0){let s=v.ncei_template_version;if(r===r)if(typeof s=="string"){if(!Dr.test(
s)){const o={};e===null?e=[o]:e.push(o),r++}}else{const o={};e===null?e=[o]:e.push(o),r++}}}var a=T===r;if(a){
const v={};e===null?e=[v]:e.push(v),r++}else r=p,e!==null&&(p?e.length=p:e=null);var f=E===r;return f?(Ie.errors=
[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),Ie.errors=
e,r===0)}Ie.evaluated={dynamicProps:!1,dynamicItems:!1};const qr=Ee;const wr=new RegExp("^NCEI_NetCDF_Point_","u"),Ir=new RegExp("^[Pp]oint$","u"),Er=new RegExp("^NCEI_NetCDF_Pro\
file_","u"),Tr=new RegExp("^[Pp]rofile$","u"),kr=new RegExp("^NCEI_NetCDF_TimeSeries_","u"),Sr=new RegExp("^[T\
t]ime[Ss]eries$","u"),xr=new RegExp("^NCEI_NetCDF_TimeSeriesProfile_","u"),Nr=new RegExp("^[Tt]ime[Ss]eries[Pp\
]rofile$","u"),Or=new RegExp("^NCEI_NetCDF_Trajectory_","u"),Rr=new RegExp("^[Tt]rajectory$","u"),Cr=new RegExp(
"^NCEI_NetCDF_TrajectoryProfile_","u"),Fr=new RegExp("^[Tt]rajectory[Pp]rofile$","u");function Ee(t,{instancePath:I="",
parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,r=0;const n=Ee.evaluated;n.
dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;if(t&&typeof t=="object"&&
!Array.isArray(t)&&t.attributes!==void 0){let h=t.attributes;const j=r,w=r;let A=!0;const k=r;if(h&&typeof h==
"object"&&!Array.isArray(h)&&h.ncei_template_version!==void 0){let B=h.ncei_template_version;if(typeof B=="str\
ing"&&!wr.test(B)){const R={};e===null?e=[R]:e.push(R),r++}}var a=k===r;if(r=w,e!==null&&(w?e.length=w:e=null),
a){const B=r;if(h&&typeof h=="object"&&!Array.isArray(h)){let m;if(h.featureType===void 0&&(m="featureType")){
const N={};e===null?e=[N]:e.push(N),r++}else if(h.featureType!==void 0){let N=h.featureType;if(r===r)if(typeof N==
"string"){if(!Ir.test(N)){const O={};e===null?e=[O]:e.push(O),r++}}else{const O={};e===null?e=[O]:e.push(O),r++}}}
var a=B===r;if(A=a,A){var f={};f.featureType=!0,f.ncei_template_version=!0}}if(!A){const B={};e===null?e=[B]:e.
push(B),r++}var v=j===r;if(v){const B=r,R=r;let m=!0;const N=r;if(h&&typeof h=="object"&&!Array.isArray(h)&&h.
ncei_template_version!==void 0){let O=h.ncei_template_version;if(typeof O=="string"&&!Er.test(O)){const q={};e===
null?e=[q]:e.push(q),r++}}var s=N===r;if(r=R,e!==null&&(R?e.length=R:e=null),s){const O=r;if(h&&typeof h=="obj\
ect"&&!Array.isArray(h)){let C;if(h.featureType===void 0&&(C="featureType")){const U={};e===null?e=[U]:e.push(
U),r++}else if(h.featureType!==void 0){let U=h.featureType;if(r===r)if(typeof U=="string"){if(!Tr.test(U)){const Z={};
e===null?e=[Z]:e.push(Z),r++}}else{const Z={};e===null?e=[Z]:e.push(Z),r++}}}var s=O===r;if(m=s,m){var l={};l.
featureType=!0,l.ncei_template_version=!0}}if(!m){const O={};e===null?e=[O]:e.push(O),r++}var v=B===r;if(v){f!==
!0&&l!==void 0&&(l===!0?f=!0:(f=f||{},Object.assign(f,l)));const O=r,q=r;let C=!0;const U=r;if(h&&typeof h=="o\
bject"&&!Array.isArray(h)&&h.ncei_template_version!==void 0){let Z=h.ncei_template_version;if(typeof Z=="strin\
g"&&!kr.test(Z)){const F={};e===null?e=[F]:e.push(F),r++}}var o=U===r;if(r=q,e!==null&&(q?e.length=q:e=null),o){
const Z=r;if(h&&typeof h=="object"&&!Array.isArray(h)){let J;if(h.featureType===void 0&&(J="featureType")){const X={};
e===null?e=[X]:e.push(X),r++}else if(h.featureType!==void 0){let X=h.featureType;if(r===r)if(typeof X=="string"){
if(!Sr.test(X)){const x={};e===null?e=[x]:e.push(x),r++}}else{const x={};e===null?e=[x]:e.push(x),r++}}}var o=Z===
r;if(C=o,C){var P={};P.featureType=!0,P.ncei_template_version=!0}}if(!C){const Z={};e===null?e=[Z]:e.push(Z),r++}
var v=O===r;if(v){f!==!0&&P!==void 0&&(P===!0?f=!0:(f=f||{},Object.assign(f,P)));const Z=r,F=r;let J=!0;const X=r;
if(h&&typeof h=="object"&&!Array.isArray(h)&&h.ncei_template_version!==void 0){let x=h.ncei_template_version;if(typeof x==
"string"&&!xr.test(x)){const V={};e===null?e=[V]:e.push(V),r++}}var c=X===r;if(r=F,e!==null&&(F?e.length=F:e=null),
c){const x=r;if(h&&typeof h=="object"&&!Array.isArray(h)){let G;if(h.featureType===void 0&&(G="featureType")){
const ee={};e===null?e=[ee]:e.push(ee),r++}else if(h.featureType!==void 0){let ee=h.featureType;if(r===r)if(typeof ee==
"string"){if(!Nr.test(ee)){const W={};e===null?e=[W]:e.push(W),r++}}else{const W={};e===null?e=[W]:e.push(W),r++}}}
var c=x===r;if(J=c,J){var D={};D.featureType=!0,D.ncei_template_version=!0}}if(!J){const x={};e===null?e=[x]:e.
push(x),r++}var v=Z===r;if(v){f!==!0&&D!==void 0&&(D===!0?f=!0:(f=f||{},Object.assign(f,D)));const x=r,V=r;let G=!0;
const ee=r;if(h&&typeof h=="object"&&!Array.isArray(h)&&h.ncei_template_version!==void 0){let W=h.ncei_template_version;
if(typeof W=="string"&&!Or.test(W)){const se={};e===null?e=[se]:e.push(se),r++}}var _=ee===r;if(r=V,e!==null&&
(V?e.length=V:e=null),_){const W=r;if(h&&typeof h=="object"&&!Array.isArray(h)){let ne;if(h.featureType===void 0&&
(ne="featureType")){const Q={};e===null?e=[Q]:e.push(Q),r++}else if(h.featureType!==void 0){let Q=h.featureType;
if(r===r)if(typeof Q=="string"){if(!Rr.test(Q)){const re={};e===null?e=[re]:e.push(re),r++}}else{const re={};e===
null?e=[re]:e.push(re),r++}}}var _=W===r;if(G=_,G){var i={};i.featureType=!0,i.ncei_template_version=!0}}if(!G){
const W={};e===null?e=[W]:e.push(W),r++}var v=x===r;if(v){f!==!0&&i!==void 0&&(i===!0?f=!0:(f=f||{},Object.assign(
f,i)));const W=r,se=r;let ne=!0;const Q=r;if(h&&typeof h=="object"&&!Array.isArray(h)&&h.ncei_template_version!==
void 0){let re=h.ncei_template_version;if(typeof re=="string"&&!Cr.test(re)){const Ve={};e===null?e=[Ve]:e.push(
Ve),r++}}var u=Q===r;if(r=se,e!==null&&(se?e.length=se:e=null),u){const re=r;if(h&&typeof h=="object"&&!Array.
isArray(h)){let We;if(h.featureType===void 0&&(We="featureType")){const ie={};e===null?e=[ie]:e.push(ie),r++}else if(h.
featureType!==void 0){let ie=h.featureType;if(r===r)if(typeof ie=="string"){if(!Fr.test(ie)){const le={};e===null?
e=[le]:e.push(le),r++}}else{const le={};e===null?e=[le]:e.push(le),r++}}}var u=re===r;if(ne=u,ne){var y={};y.featureType=
!0,y.ncei_template_version=!0}}if(!ne){const re={};e===null?e=[re]:e.push(re),r++}var v=W===r;v&&f!==!0&&y!==void 0&&
(y===!0?f=!0:(f=f||{},Object.assign(f,y)))}}}}}}var b=T===r;if(b){const h={};e===null?e=[h]:e.push(h),r++}else
r=p,e!==null&&(p?e.length=p:e=null);var g=E===r;return g?(Ee.errors=[{instancePath:I,schemaPath:"#/not",keyword:"\
not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),Ee.errors=e,r===0)}Ee.evaluated={dynamicProps:!1,dynamicItems:!1};
const zr=Te;function Te(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=Te.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.variables!==void 0){let o=t.variables;const P=r,c=r;if(Array.isArray(
o)){const D=r,_=o.length;for(let i=0;i<_;i++){let u=o[i];const y=r;if(u&&typeof u=="object"&&!Array.isArray(u)&&
u.attributes!==void 0){let b=u.attributes;const g=r;let h=!1;const j=r;if(b&&typeof b=="object"&&!Array.isArray(
b)){let A;if(b.sample_dimension===void 0&&(A="sample_dimension")){const k={};e===null?e=[k]:e.push(k),r++}}var a=j===
r;h=h||a;const w=r;if(b&&typeof b=="object"&&!Array.isArray(b)){let A;if(b.instance_dimension===void 0&&(A="in\
stance_dimension")){const k={};e===null?e=[k]:e.push(k),r++}}var a=w===r;if(h=h||a,h)r=g,e!==null&&(g?e.length=
g:e=null);else{const A={};e===null?e=[A]:e.push(A),r++}}var f=y===r;if(f)break}if(f)r=D,e!==null&&(D?e.length=
D:e=null);else{const i={};e===null?e=[i]:e.push(i),r++}}var v=c===r;if(v){const D={};e===null?e=[D]:e.push(D),
r++}else r=P,e!==null&&(P?e.length=P:e=null)}var s=T===r;if(s){const o={};e===null?e=[o]:e.push(o),r++}else r=
p,e!==null&&(p?e.length=p:e=null);var l=E===r;return l?(Te.errors=[{instancePath:I,schemaPath:"#/not",keyword:"\
not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),Te.errors=e,r===0)}Te.evaluated={dynamicProps:!1,dynamicItems:!1};
const Gr=ke;const $r=new RegExp("_Point_","u");function ke(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,
dynamicAnchors:M={}}={}){let e=null,r=0;const n=ke.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&
(n.items=void 0);const d=r,E=r,p=r,T=r;if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let s=t.
attributes;if(s&&typeof s=="object"&&!Array.isArray(s)&&s.ncei_template_version!==void 0){let l=s.ncei_template_version;
const o=r,P=r;if(typeof l=="string"&&!$r.test(l)){const c={};e===null?e=[c]:e.push(c),r++}var a=P===r;if(a){const c={};
e===null?e=[c]:e.push(c),r++}else r=o,e!==null&&(o?e.length=o:e=null)}}var f=T===r;if(f){const s={};e===null?e=
[s]:e.push(s),r++}else r=p,e!==null&&(p?e.length=p:e=null);var v=E===r;return v?(ke.errors=[{instancePath:I,schemaPath:"\
#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),ke.errors=e,r===0)}ke.evaluated={dynamicProps:!1,
dynamicItems:!1};const Lr=Se;function Se(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=Se.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.variables!==void 0){let l=t.variables;if(Array.isArray(l)){const o=r,
P=l.length;for(let c=0;c<P;c++){let D=l[c];const _=r;if(D&&typeof D=="object"&&!Array.isArray(D)){if(D.type!==
void 0){let i=D.type;const u=r;if(!(i==="byte"||i==="short"||i==="int")){const y={};e===null?e=[y]:e.push(y),r++}
var a=u===r}else var a=!0;if(a){if(D.dimensions!==void 0){let i=D.dimensions;const u=r;if(Array.isArray(i)){if(i.
length>1){const b={};e===null?e=[b]:e.push(b),r++}else if(i.length<1){const b={};e===null?e=[b]:e.push(b),r++}}
var a=u===r}else var a=!0;if(a)if(D.attributes!==void 0){let i=D.attributes;const u=r;if(i&&typeof i=="object"&&
!Array.isArray(i)){let b;if(i.cf_role===void 0&&(b="cf_role")){const g={};e===null?e=[g]:e.push(g),r++}}var a=u===
r}else var a=!0}}var f=_===r;if(f)break}if(f)r=o,e!==null&&(o?e.length=o:e=null);else{const c={};e===null?e=[c]:
e.push(c),r++}}}var v=T===r;if(v){const l={};e===null?e=[l]:e.push(l),r++}else r=p,e!==null&&(p?e.length=p:e=null);
var s=E===r;return s?(Se.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&
(d?e.length=d:e=null),Se.errors=e,r===0)}Se.evaluated={dynamicProps:!1,dynamicItems:!1};const Hr=xe;function xe(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=xe.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let v=t.attributes;if(v&&typeof v=="object"&&
!Array.isArray(v)){let s;if(v.uuid===void 0&&(s="uuid")){const l={};e===null?e=[l]:e.push(l),r++}}}var a=T===r;
if(a){const v={};e===null?e=[v]:e.push(v),r++}else r=p,e!==null&&(p?e.length=p:e=null);var f=E===r;return f?(xe.
errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),
xe.errors=e,r===0)}xe.evaluated={dynamicProps:!1,dynamicItems:!1};const Mr=Ne;function Ne(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=Ne.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let v=t.attributes;if(v&&typeof v=="object"&&
!Array.isArray(v)){let s;if(v.sea_name===void 0&&(s="sea_name")){const l={};e===null?e=[l]:e.push(l),r++}}}var a=T===
r;if(a){const v={};e===null?e=[v]:e.push(v),r++}else r=p,e!==null&&(p?e.length=p:e=null);var f=E===r;return f?
(Ne.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),
Ne.errors=e,r===0)}Ne.evaluated={dynamicProps:!1,dynamicItems:!1};const Br=Oe;function Oe(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=Oe.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let v=t.attributes;if(v&&typeof v=="object"&&
!Array.isArray(v)){let s;if(v.source===void 0&&(s="source")){const l={};e===null?e=[l]:e.push(l),r++}}}var a=T===
r;if(a){const v={};e===null?e=[v]:e.push(v),r++}else r=p,e!==null&&(p?e.length=p:e=null);var f=E===r;return f?
(Oe.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),
Oe.errors=e,r===0)}Oe.evaluated={dynamicProps:!1,dynamicItems:!1};const Jr=Re;function Re(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=Re.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.variables!==void 0){let l=t.variables;if(Array.isArray(l)){const o=r,
P=l.length;for(let c=0;c<P;c++){let D=l[c];const _=r;if(D&&typeof D=="object"&&!Array.isArray(D)&&D.attributes!==
void 0){let i=D.attributes;const u=r;let y=!1;const b=r;if(i&&typeof i=="object"&&!Array.isArray(i)){let h;if(i.
ncei_name===void 0&&(h="ncei_name")){const j={};e===null?e=[j]:e.push(j),r++}}var a=b===r;y=y||a;const g=r;if(i&&
typeof i=="object"&&!Array.isArray(i)){let h;if(i.make_model===void 0&&(h="make_model")){const j={};e===null?e=
[j]:e.push(j),r++}}var a=g===r;if(y=y||a,y)r=u,e!==null&&(u?e.length=u:e=null);else{const h={};e===null?e=[h]:
e.push(h),r++}}var f=_===r;if(f)break}if(f)r=o,e!==null&&(o?e.length=o:e=null);else{const c={};e===null?e=[c]:
e.push(c),r++}}}var v=T===r;if(v){const l={};e===null?e=[l]:e.push(l),r++}else r=p,e!==null&&(p?e.length=p:e=null);
var s=E===r;return s?(Re.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&
(d?e.length=d:e=null),Re.errors=e,r===0)}Re.evaluated={dynamicProps:!1,dynamicItems:!1};const Ur=Ce;function Ce(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=Ce.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.variables!==void 0){let s=t.variables;if(Array.isArray(s)){const l=r,
o=s.length;for(let P=0;P<o;P++){let c=s[P];const D=r;if(c&&typeof c=="object"&&!Array.isArray(c)&&c.attributes!==
void 0){let _=c.attributes;if(_&&typeof _=="object"&&!Array.isArray(_)){let i;if(_.grid_mapping_name===void 0&&
(i="grid_mapping_name")||_.epsg_code===void 0&&(i="epsg_code")){const u={};e===null?e=[u]:e.push(u),r++}}}var a=D===
r;if(a)break}if(a)r=l,e!==null&&(l?e.length=l:e=null);else{const P={};e===null?e=[P]:e.push(P),r++}}}var f=T===
r;if(f){const s={};e===null?e=[s]:e.push(s),r++}else r=p,e!==null&&(p?e.length=p:e=null);var v=E===r;return v?
(Ce.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),
Ce.errors=e,r===0)}Ce.evaluated={dynamicProps:!1,dynamicItems:!1};const ae=Fe;const Zr=new RegExp("sea_water","u");function Fe(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,
dynamicAnchors:M={}}={}){let e=null,r=0;const n=Fe.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&
(n.items=void 0);const d=r,E=r,p=r,T=r;if(t&&typeof t=="object"&&!Array.isArray(t)){if(t.role!==void 0){const s=r;
if(t.role!=="data"){const l={};e===null?e=[l]:e.push(l),r++}var a=s===r}else var a=!0;if(a){if(t.ancillary!==void 0){
const s=r;if(t.ancillary!==!1){const o={};e===null?e=[o]:e.push(o),r++}var a=s===r}else var a=!0;if(a)if(t.attributes!==
void 0){let s=t.attributes;const l=r;if(s&&typeof s=="object"&&!Array.isArray(s)){let P;if(s.standard_name===void 0&&
(P="standard_name")){const c={};e===null?e=[c]:e.push(c),r++}else if(s.standard_name!==void 0){let c=s.standard_name;
if(typeof c=="string"&&!Zr.test(c)){const D={};e===null?e=[D]:e.push(D),r++}}}var a=l===r}else var a=!0}}var f=T===
r;if(f){const s={};e===null?e=[s]:e.push(s),r++}else r=p,e!==null&&(p?e.length=p:e=null);var v=E===r;return v?
(Fe.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),
Fe.errors=e,r===0)}Fe.evaluated={dynamicProps:!1,dynamicItems:!1};const Kr=ze;function ze(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=ze.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let v=t.attributes;if(v&&typeof v=="object"&&
!Array.isArray(v)){let s;if(v.instrument===void 0&&(s="instrument")){const l={};e===null?e=[l]:e.push(l),r++}}}
var a=T===r;if(a){const v={};e===null?e=[v]:e.push(v),r++}else r=p,e!==null&&(p?e.length=p:e=null);var f=E===r;
return f?(ze.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=
d:e=null),ze.errors=e,r===0)}ze.evaluated={dynamicProps:!1,dynamicItems:!1};const Qr=Ge;const Vr=new RegExp("^[Pp]latform","u");function Ge(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,
dynamicAnchors:M={}}={}){let e=null,r=0;const n=Ge.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&
(n.items=void 0);const d=r,E=r,p=r,T=r;if(t&&typeof t=="object"&&!Array.isArray(t)&&t.variables!==void 0){let P=t.
variables;if(Array.isArray(P)){const c=r,D=P.length;for(let _=0;_<D;_++){let i=P[_];const u=r,y=r;let b=!1;const g=r;
if(i&&typeof i=="object"&&!Array.isArray(i)&&i.attributes!==void 0){let j=i.attributes;const w=r;let A=!1;const k=r;
if(j&&typeof j=="object"&&!Array.isArray(j)){let O;if(j.ncei_code===void 0&&(O="ncei_code")){const q={};e===null?
e=[q]:e.push(q),r++}}var a=k===r;A=A||a;const B=r;if(j&&typeof j=="object"&&!Array.isArray(j)){let O;if(j.call_sign===
void 0&&(O="call_sign")){const q={};e===null?e=[q]:e.push(q),r++}}var a=B===r;A=A||a;const R=r;if(j&&typeof j==
"object"&&!Array.isArray(j)){let O;if(j.ices_code===void 0&&(O="ices_code")){const q={};e===null?e=[q]:e.push(
q),r++}}var a=R===r;A=A||a;const m=r;if(j&&typeof j=="object"&&!Array.isArray(j)){let O;if(j.wmo_code===void 0&&
(O="wmo_code")){const q={};e===null?e=[q]:e.push(q),r++}}var a=m===r;A=A||a;const N=r;if(j&&typeof j=="object"&&
!Array.isArray(j)){let O;if(j.imo_code===void 0&&(O="imo_code")){const q={};e===null?e=[q]:e.push(q),r++}}var a=N===
r;A=A||a;const S=r;if(j&&typeof j=="object"&&!Array.isArray(j)){let O;if(j.ioos_code===void 0&&(O="ioos_code")){
const q={};e===null?e=[q]:e.push(q),r++}}var a=S===r;if(A=A||a,A)r=w,e!==null&&(w?e.length=w:e=null);else{const O={};
e===null?e=[O]:e.push(O),r++}}var v=g===r;if(b=b||v,v){var f={};f.attributes=!0}const h=r;if(i&&typeof i=="obj\
ect"&&!Array.isArray(i)&&i.name!==void 0){let j=i.name;if(typeof j=="string"&&!Vr.test(j)){const w={};e===null?
e=[w]:e.push(w),r++}}var v=h===r;if(b=b||v,v&&f!==!0&&(f=f||{},f.name=!0),b)r=y,e!==null&&(y?e.length=y:e=null);else{
const j={};e===null?e=[j]:e.push(j),r++}var s=u===r;if(s)break}if(s)r=c,e!==null&&(c?e.length=c:e=null);else{const _={};
e===null?e=[_]:e.push(_),r++}}}var l=T===r;if(l){const P={};e===null?e=[P]:e.push(P),r++}else r=p,e!==null&&(p?
e.length=p:e=null);var o=E===r;return o?(Ge.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],
!1):(r=d,e!==null&&(d?e.length=d:e=null),Ge.errors=e,r===0)}Ge.evaluated={dynamicProps:!1,dynamicItems:!1};const Wr=$e;function $e(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=$e.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let s=t.attributes;const l=r;let o=!1;const P=r;
if(s&&typeof s=="object"&&!Array.isArray(s)){let c;if(s.platform===void 0&&(c="platform")){const D={};e===null?
e=[D]:e.push(D),r++}}var a=P===r;if(o=o||a,o)r=l,e!==null&&(l?e.length=l:e=null);else{const c={};e===null?e=[c]:
e.push(c),r++}}var f=T===r;if(f){const s={};e===null?e=[s]:e.push(s),r++}else r=p,e!==null&&(p?e.length=p:e=null);
var v=E===r;return v?($e.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&
(d?e.length=d:e=null),$e.errors=e,r===0)}$e.evaluated={dynamicProps:!1,dynamicItems:!1};const Xr=Le;function Le(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=Le.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let s=t.attributes;const l=r;let o=!1;const P=r;
if(s&&typeof s=="object"&&!Array.isArray(s)){let c;if(s.grid_mapping===void 0&&(c="grid_mapping")){const D={};
e===null?e=[D]:e.push(D),r++}}var a=P===r;if(o=o||a,o)r=l,e!==null&&(l?e.length=l:e=null);else{const c={};e===
null?e=[c]:e.push(c),r++}}var f=T===r;if(f){const s={};e===null?e=[s]:e.push(s),r++}else r=p,e!==null&&(p?e.length=
p:e=null);var v=E===r;return v?(Le.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=
d,e!==null&&(d?e.length=d:e=null),Le.errors=e,r===0)}Le.evaluated={dynamicProps:!1,dynamicItems:!1};const Yr=He;function He(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=He.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let s=t.attributes;const l=r;let o=!1;const P=r;
if(s&&typeof s=="object"&&!Array.isArray(s)){let c;if(s.coverage_content_type===void 0&&(c="coverage_content_t\
ype")){const D={};e===null?e=[D]:e.push(D),r++}}var a=P===r;if(o=o||a,o)r=l,e!==null&&(l?e.length=l:e=null);else{
const c={};e===null?e=[c]:e.push(c),r++}}var f=T===r;if(f){const s={};e===null?e=[s]:e.push(s),r++}else r=p,e!==
null&&(p?e.length=p:e=null);var v=E===r;return v?(He.errors=[{instancePath:I,schemaPath:"#/not",keyword:"not",
params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),He.errors=e,r===0)}He.evaluated={dynamicProps:!1,dynamicItems:!1};
const et=Me;function Me(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=Me.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let s=t.attributes;const l=r;let o=!1;const P=r;
if(s&&typeof s=="object"&&!Array.isArray(s)){let i;if(s.valid_min===void 0&&(i="valid_min")){const u={};e===null?
e=[u]:e.push(u),r++}}var a=P===r;o=o||a;const c=r;if(s&&typeof s=="object"&&!Array.isArray(s)){let i;if(s.valid_range===
void 0&&(i="valid_range")){const u={};e===null?e=[u]:e.push(u),r++}}var a=c===r;o=o||a;const D=r;if(s&&typeof s==
"object"&&!Array.isArray(s)){let i;if(s.actual_range===void 0&&(i="actual_range")){const u={};e===null?e=[u]:e.
push(u),r++}}var a=D===r;o=o||a;const _=r;if(s&&typeof s=="object"&&!Array.isArray(s)){let i;if(s.data_min===void 0&&
(i="data_min")){const u={};e===null?e=[u]:e.push(u),r++}}var a=_===r;if(o=o||a,o)r=l,e!==null&&(l?e.length=l:e=
null);else{const i={};e===null?e=[i]:e.push(i),r++}}var f=T===r;if(f){const s={};e===null?e=[s]:e.push(s),r++}else
r=p,e!==null&&(p?e.length=p:e=null);var v=E===r;return v?(Me.errors=[{instancePath:I,schemaPath:"#/not",keyword:"\
not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),Me.errors=e,r===0)}Me.evaluated={dynamicProps:!1,dynamicItems:!1};
const rt=Be;function Be(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=Be.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)){if(t.role!==void 0){const s=r;if(t.role!=="data"){const l={};e===
null?e=[l]:e.push(l),r++}var a=s===r}else var a=!0;if(a){if(t.ancillary!==void 0){const s=r;if(t.ancillary!==!1){
const o={};e===null?e=[o]:e.push(o),r++}var a=s===r}else var a=!0;if(a)if(t.attributes!==void 0){let s=t.attributes;
const l=r;if(s&&typeof s=="object"&&!Array.isArray(s)){let P;if(s.units===void 0&&(P="units")){const c={};e===
null?e=[c]:e.push(c),r++}else if(s.coverage_content_type!==void 0&&s.coverage_content_type!=="physicalMeasurem\
ent"){const c={};e===null?e=[c]:e.push(c),r++}}var a=l===r}else var a=!0}}var f=T===r;if(f){const s={};e===null?
e=[s]:e.push(s),r++}else r=p,e!==null&&(p?e.length=p:e=null);var v=E===r;return v?(Be.errors=[{instancePath:I,
schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),Be.errors=e,r===0)}Be.evaluated=
{dynamicProps:!1,dynamicItems:!1};const tt=Je;function Je(t,{instancePath:I="",parentData:$,parentDataProperty:L,rootData:H=t,dynamicAnchors:M={}}={}){let e=null,
r=0;const n=Je.evaluated;n.dynamicProps&&(n.props=void 0),n.dynamicItems&&(n.items=void 0);const d=r,E=r,p=r,T=r;
if(t&&typeof t=="object"&&!Array.isArray(t)&&t.attributes!==void 0){let s=t.attributes;const l=r;let o=!1;const P=r;
if(s&&typeof s=="object"&&!Array.isArray(s)){let D;if(s.standard_name===void 0&&(D="standard_name")){const _={};
e===null?e=[_]:e.push(_),r++}}var a=P===r;o=o||a;const c=r;if(s&&typeof s=="object"&&!Array.isArray(s)){let D;
if(s.ncei_name===void 0&&(D="ncei_name")){const _={};e===null?e=[_]:e.push(_),r++}}var a=c===r;if(o=o||a,o)r=l,
e!==null&&(l?e.length=l:e=null);else{const D={};e===null?e=[D]:e.push(D),r++}}var f=T===r;if(f){const s={};e===
null?e=[s]:e.push(s),r++}else r=p,e!==null&&(p?e.length=p:e=null);var v=E===r;return v?(Je.errors=[{instancePath:I,
schemaPath:"#/not",keyword:"not",params:{}}],!1):(r=d,e!==null&&(d?e.length=d:e=null),Je.errors=e,r===0)}Je.evaluated=
{dynamicProps:!1,dynamicItems:!1};const nt={ctd:Xe,"ctd/instrument-model/must":Ye,"ctd/instrument-serial-numbe\
r/must":er,"ctd/calibration-date/must":rr,"ctd/accuracy/must":tr,"ctd/platform/must":ir,"ctd/contact/must":lr,
"ctd/processing/must":ar,"ctd/licence/must":fr,"ctd/derived-method/when":or,"ctd/derived-method/must":ur,"ctd/\
sampling-rate/when":cr,"ctd/sampling-rate/must":pr,"ctd/time-moment/when":mr,"ctd/time-moment/must":_r,"ctd/po\
sition-method/must":vr,"ctd/people/must":br,"ctd/collection/must":gr,"us-template":jr,"us-template/version-tex\
t/must":Pr,"us-template/version-kind/must":qr,"us-template/no-ragged/must":zr,"us-template/identity/when":Gr,"\
us-template/identity/must":Lr,"us-template/uuid/must":Hr,"us-template/sea-name/must":Mr,"us-template/source/mu\
st":Br,"us-template/instrument-variable/must":Jr,"us-template/crs-variable/must":Ur,"us-template/data-instrume\
nt/when":ae,"us-template/data-instrument/must":Kr,"us-template/platform-variable/must":Qr,"us-template/data-pl\
atform/when":ae,"us-template/data-platform/must":Wr,"us-template/data-mapping/when":ae,"us-template/data-mappi\
ng/must":Xr,"us-template/data-content/when":ae,"us-template/data-content/must":Yr,"us-template/data-range/when":ae,
"us-template/data-range/must":et,"us-template/data-name/when":rt,"us-template/data-name/must":tt};export{nt as shippedSchemas};
