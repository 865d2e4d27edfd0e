/** Papers, pages and drawings as files. */
import { base64 } from '../../../shared/base64';
import { phrase } from '../../../shared/phrase';
import type { Exported, ExportParams, Form, Refused } from '../../../shared/protocol/pages';
import { drawnViews } from '../../documents/drawings';
import { sheetsToDxf } from '../../documents/dxf';
import { kindNamed, type Made, pageOf } from '../../documents/pages';
import {
  type AsFile,
  type Heavy,
  isHeavy,
  type Written,
  written,
} from '../../documents/paper/written';
import { sheetsToSvg } from '../../documents/svg';
import { canDraw, VIEWS } from '../../documents/work-sheets';
import type { Job } from '../../engine/workspace/job';
import type { Papers } from '../surroundings';
import { nameFrom, titleOf } from './file-name';

const TYPES: Readonly<Record<Form, string>> = {
  pdf: 'application/pdf',
  html: 'text/html',
  md: 'text/markdown',
  csv: 'text/csv',
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  xml: 'application/xml',
  svg: 'image/svg+xml',
  dxf: 'image/vnd.dxf',
  json: 'application/json',
};

export function refused(why: string): Refused {
  return { refused: why };
}

export type PageWishes = Parameters<typeof pageOf>[2];

/** @param file what the job’s file is called */
export async function exported(
  job: Job,
  { page, form, options = {} }: ExportParams,
  { papers, file, ...wishes }: PageWishes & { readonly papers: Papers; readonly file: string },
): Promise<Exported | Refused> {
  if (!Object.hasOwn(TYPES, form)) return refused(phrase`There is no form ${form}.`);
  if (page === 'drawing') return drawing(job, form, options);
  const kind = kindNamed(page);
  if (kind && !kind.forms.includes(form)) return refused(notSo(form));
  const made = pageOf(job, page, { ...wishes, options, form });
  if (typeof made === 'string') return refused(made);
  const done = await asFile(made, form, { bom: options.bom, file, papers });
  if (typeof done === 'string') return refused(done);
  return fileOf(titleOf(made.paper, job, file), form, done, made.asides);
}

async function asFile(
  { paper, xml }: Made,
  form: Form,
  { papers, ...how }: { readonly bom?: boolean; readonly file: string; readonly papers: Papers },
): Promise<AsFile | string> {
  if (xml !== undefined) return { content: xml, asides: [] };
  const heavy = isHeavy(form) ? await loaded(papers) : undefined;
  return written(paper, form as Written, { ...how, heavy: () => heavy! });
}

function notSo(form: Form): string {
  return phrase`It cannot be written as ${form}.`;
}

async function loaded(papers: Papers): Promise<Heavy> {
  const [writers, fonts] = await Promise.all([papers.writers(), papers.fonts()]);
  return { writers, fonts };
}

function drawing(
  job: Job,
  form: Form,
  { work: name, view = 'front', course }: NonNullable<ExportParams['options']>,
): Exported | Refused {
  if (form !== 'svg' && form !== 'dxf') return refused(notSo(form));
  const works = job.works.filter(canDraw);
  const work = name === undefined ? works[0] : works.find((each) => each.name === name);
  if (!work && name === undefined)
    return refused(phrase`The file holds no work that can be drawn.`);
  if (!work) return refused(phrase`There is nothing called ${name} to draw.`);
  const views = view === 'all' ? VIEWS : VIEWS.filter((each) => each === view);
  const drawn = drawnViews(work, job, views, whole(course));
  if (!drawn.length) return refused(phrase`${work.title || work.kind} has no such drawing.`);
  const sheets = drawn.flatMap((each) => each.sheets);
  const content = form === 'dxf' ? sheetsToDxf(sheets) : sheetsToSvg(sheets);
  const title = view === 'all' ? work.name || work.kind : drawn[0]!.name;
  return fileOf(title, form, { content, asides: [] }, []);
}

/** A course that nobody counts to is none. */
function whole(course: number | undefined): number | undefined {
  return Number.isInteger(course) && course! >= 1 && course! < 1e6 ? course : undefined;
}

function fileOf(
  title: string,
  form: Form,
  { content, asides }: AsFile,
  more: readonly string[],
): Exported {
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  return {
    name: `${nameFrom(title)}.${form}`,
    type: TYPES[form],
    base64: base64(bytes),
    asides: [...more, ...asides],
  };
}
