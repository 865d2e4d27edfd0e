/**
 * Writers of papers: a paper in, the text of a file out. They know nothing of a job. PDF and XLSX stand apart, in
 * `heavy`: what prices a job does not pay for what draws a page.
 */
export { csvOf } from './csv';
export { htmlOf } from './html';
export { markdownOf } from './markdown';
export type { Letterhead, Paper, Picture, Table } from './model';
export { MOST_PICTURE_BYTES, pictureSize } from './picture';
export { tablesOf } from './tables';
