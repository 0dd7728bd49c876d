/** The parser of fonts where letters are all that a file is loaded for, as in the page; where there is a disk it is loaded when the first font is read. */
export { parse as fontParser } from 'opentype.js/dist/opentype.mjs';
