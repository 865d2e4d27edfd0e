/**
 * The tables of a paper as a workbook (ECMA-376, Office Open XML): a sheet each, figures as figures. Written out by
 * itself: six small files in a ZIP, all of a fixed date, so that the same tables are the same bytes.
 */
import { strToU8, zipSync } from 'fflate';
import { escapeXml } from '../../svg';
import type { Paper, Table } from '../model';
import { tablesOf } from '../tables';
import { sheetXml } from './sheet';
import { Formats } from './styles';

/** The bytes of a workbook with a sheet for each table of the paper; numbers are numbers, and no cell is a formula. */
export function xlsxOf(paper: Paper): Uint8Array {
  const tables = tablesOf(paper.parts);
  const names = sheetNames(tables);
  const formats = new Formats();
  const sheets = tables.map((table) => sheetXml(table, formats));
  const files: Record<string, string> = {
    '[Content_Types].xml': contentTypes(sheets.length),
    '_rels/.rels': relations([['officeDocument', 'xl/workbook.xml']]),
    'xl/workbook.xml': workbook(names),
    'xl/_rels/workbook.xml.rels': relations([
      ...sheets.map((_, i): [string, string] => ['worksheet', `worksheets/sheet${i + 1}.xml`]),
      ['styles', 'styles.xml'],
    ]),
    'xl/styles.xml': formats.xml(),
  };
  for (const [i, sheet] of sheets.entries()) files[`xl/worksheets/sheet${i + 1}.xml`] = sheet;
  return zipped(files);
}

/** The earliest day that a ZIP can name, read as local time: so it is the same digits everywhere. */
const MTIME = new Date(1980, 0, 1);

function zipped(files: Readonly<Record<string, string>>): Uint8Array {
  const bytes = Object.entries(files).map(([name, text]) => [name, strToU8(text)]);
  return zipSync(Object.fromEntries(bytes), { mtime: MTIME, level: 6 });
}

/** At most 31 signs, none that a name may not have, each once whatever its capitals. */
function sheetNames(tables: readonly Table[]): string[] {
  const taken = new Set<string>();
  return tables.map(({ caption, name }) => {
    const wish =
      (caption ?? name)
        .replace(/[[\]:*?/\\]/g, ' ')
        .replace(/^'|'$/g, '')
        .trim() || name;
    const upTo = (most: number) => [...wish].slice(0, most).join('').trim();
    let found = upTo(31);
    for (let n = 2; taken.has(found.toLowerCase()); n++)
      found = `${upTo(30 - String(n).length)} ${n}`;
    taken.add(found.toLowerCase());
    return found;
  });
}

const XML = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const DOCUMENT = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';

function contentTypes(sheets: number): string {
  const kind = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
  const part = (name: string, type: string) =>
    `<Override PartName="/xl/${name}.xml" ContentType="${kind}.${type}+xml"/>`;
  const all = Array.from({ length: sheets }, (_, i) =>
    part(`worksheets/sheet${i + 1}`, 'worksheet'),
  );
  return `${XML}<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>${part('workbook', 'sheet.main')}${all.join('')}${part('styles', 'styles')}</Types>`;
}

function relations(all: readonly (readonly [string, string])[]): string {
  const rows = all.map(
    ([type, target], i) =>
      `<Relationship Id="rId${i + 1}" Type="${DOCUMENT}/${type}" Target="${target}"/>`,
  );
  return `${XML}<Relationships xmlns="${PACKAGE}/relationships">${rows.join('')}</Relationships>`;
}

function workbook(names: readonly string[]): string {
  const sheets = names.map(
    (name, i) => `<sheet name="${escapeXml(name)}" sheetId="${i + 1}" r:id="rId${i + 1}"/>`,
  );
  return `${XML}<workbook xmlns="${MAIN}" xmlns:r="${DOCUMENT}"><sheets>${sheets.join('')}</sheets></workbook>`;
}
