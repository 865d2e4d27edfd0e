/** Everything about papers, and what the command line does besides. */
import type { Parts } from '../parts';
import { registerCompare } from './compare';
import { registerDeeds } from './deeds';
import { registerJobs } from './jobs';
import { registerPages } from './pages';
import { registerTemplates } from './templates';
import { registerTools } from './tools';

export function registerPapers(parts: Parts): void {
  registerPages(parts);
  registerDeeds(parts);
  registerTemplates(parts);
  registerCompare(parts);
  registerJobs(parts);
  registerTools(parts);
}
