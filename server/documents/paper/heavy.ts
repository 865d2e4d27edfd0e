/** The writers that weigh much: a bundle of their own, read only where one of their files is asked for. */
export { type Fonts, type Pdf, pdfOf } from './pdf';
export { xlsxOf } from './xlsx';
