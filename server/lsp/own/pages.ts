/** Papers and pages of a job, to be read and as files. */
import { phrase } from '../../../shared/phrase';
import type { FileParams } from '../../../shared/protocol';
import {
  EXPORT,
  type Exported,
  type ExportParams,
  isRefused,
  PAGE,
  PAGES,
  type PageItem,
  type PageParams,
  type PageShown,
  type Refused,
} from '../../../shared/protocol/pages';
import { VERSION } from '../../../shared/version';
import { logoNamed } from '../../documents/letterhead';
import { pageOf, pagesOf } from '../../documents/pages';
import {
  MOST_PICTURE_BYTES,
  markdownOf,
  type Paper,
  type Picture,
  pictureSize,
} from '../../documents/paper';
import { bodyOf } from '../../documents/paper/html';
import type { Job } from '../../engine/workspace/job';
import { lastOf } from '../beside';
import type { Parts } from '../parts';
import type { OpenFile, Session } from '../session';
import { onFile, onFileLong } from './asked';
import { beforeOf } from './before';
import { exported, refused } from './exports';

export function registerPages(parts: Parts): void {
  const { session } = parts;
  onFile<FileParams, readonly PageItem[]>(parts, PAGES, (_, file) => pagesOf(session().job(file)));
  onFileLong<PageParams, PageShown | Refused>(parts, PAGE, (params, file) =>
    pageShown(session(), file, params),
  );
  onFileLong<ExportParams, Exported | Refused>(parts, EXPORT, (params, file) =>
    pageExported(session(), file, params),
  );
}

async function pageShown(session: Session, file: OpenFile, { page, options }: PageParams) {
  const job = session.job(file);
  const { asides, ...wishes } = await wishesOf(session, file, job, options);
  const made = pageOf(job, page, { ...wishes, options });
  if (typeof made === 'string') return refused(made);
  return { ...pageOfPaper(made.paper), asides: [...made.asides, ...asides] };
}

async function pageExported(session: Session, file: OpenFile, params: ExportParams) {
  const job = session.job(file);
  const { asides, ...wishes } = await wishesOf(session, file, job, params.options);
  const { papers } = session.lent;
  const called = lastOf(file.uri) ?? file.uri;
  const made = await exported(job, params, { ...wishes, papers, file: called });
  return isRefused(made) ? made : { ...made, asides: [...made.asides, ...asides] };
}

/** What stands around a job: its firm’s logo, and for a note of changes what was sent. */
async function wishesOf(
  session: Session,
  file: OpenFile,
  job: Job,
  options: PageParams['options'],
) {
  const found = options?.before && beforeOf(session, file, options.before);
  const before = typeof found === 'object' && 'job' in found ? found.job : undefined;
  return { version: VERSION, before, ...(await logoOf(session, job)) };
}

/** What is wrong with it is said, and the paper goes without. */
export async function logoOf(session: Session, job: Job) {
  const named = logoNamed(job);
  if (!named) return { asides: [] };
  const found = await pictureIn(session, named);
  if (typeof found !== 'string') return { logo: found, asides: [] };
  return { asides: [phrase`The logo ${named.file} is left out: ${found}.`] };
}

async function pictureIn(
  { lent: { files } }: Session,
  { from, file }: NonNullable<ReturnType<typeof logoNamed>>,
): Promise<Omit<Picture, 'words'> | string> {
  const name = files.resolve(from, file);
  if (name === undefined) return phrase`it lies outside the open folders`;
  const bytes = await files.bytes(name, MOST_PICTURE_BYTES);
  if (!bytes) return phrase`there is no such file, or it is larger than 1 MiB`;
  const size = pictureSize(bytes);
  return typeof size === 'string' ? size : { bytes, type: size.type };
}

/** A page as it is read. */
export function pageOfPaper(paper: Paper): PageShown {
  const { kind, title, lang } = paper;
  return { kind, title, lang, html: bodyOf(paper), markdown: markdownOf(paper), asides: [] };
}
