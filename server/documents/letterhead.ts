/** Whose papers these are: the firm of the job, as its block says. */
import { wordOf } from '../engine/resolve/book';
import { type BlockFacts, defaultLine, factsOf } from '../engine/resolve/env';
import type { Job } from '../engine/workspace/job';
import { fromBlock, fromLines } from './from';
import type { Letterhead, Picture } from './paper/model';
import { type QuoteWords, wordsFor } from './words';

export function firmFacts(job: Job): BlockFacts | undefined {
  const block = job.book.blocksOf('firm')[0];
  return block && factsOf(block, job.env);
}

/** @param logo the picture that {@link logoNamed} names, once somebody has read it */
export function letterheadOf(
  job: Job,
  words: QuoteWords,
  logo: Omit<Picture, 'words'> | undefined,
): Letterhead | undefined {
  const firm = firmFacts(job);
  if (!firm) return undefined;
  const { name } = firm;
  const word = (key: string) => firm.line(key)?.word('text') ?? '';
  const tax = word('tax-number');
  const town = [word('town'), word('postcode')].filter(Boolean).join(' ');
  return {
    name,
    address: [...firm.lines('address').map((line) => line.word('text')), town].filter(Boolean),
    contact: [word('phone'), word('email'), tax && words.taxNumber(job.price.taxName, tax)].filter(
      Boolean,
    ),
    logo: logo && { ...logo, words: words.logo(name) },
    from: {
      name: fromBlock(firm.block),
      under: fromLines(...UNDER.flatMap((key) => firm.lines(key))),
    },
  };
}

const UNDER = ['address', 'town', 'postcode', 'phone', 'email', 'tax-number'];

/** Tax is charged, and no number says that the firm may: who is not registered for it charges none. */
export function chargesUnregistered(job: Job): boolean {
  const firm = firmFacts(job);
  return firm !== undefined && !firm.line('tax-number')?.word('text') && job.price.tax.value.gt(0);
}

/** The file of the firm's logo as its line has it, and the file which that line stands in. */
export function logoNamed(job: Job): { readonly file: string; readonly from: string } | undefined {
  const line = firmFacts(job)?.line('logo');
  const file = line?.word('file');
  return line && file ? { file, from: line.block.file.name } : undefined;
}

/** BCP 47, of the words on the job's papers. */
export function languageOf({ env }: Job): string {
  return wordOf(defaultLine(env, 'language')?.values.language) || 'en-GB';
}

/** The letterhead of a job’s papers, in their language. */
export function headOf(job: Job, logo: Omit<Picture, 'words'> | undefined): Letterhead | undefined {
  return letterheadOf(job, wordsFor(languageOf(job)).quote, logo);
}
