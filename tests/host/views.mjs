// Every view that a picture is taken of, by its name.
import first from './views/first.mjs';
import job from './views/job.mjs';
import pages from './views/pages.mjs';
import preview from './views/preview.mjs';
import questions from './views/questions.mjs';
import readme from './views/readme.mjs';
import text from './views/text.mjs';
import writing from './views/writing.mjs';

/** The window with no folder comes last: whatever is taken after it would have to open one. */
export const VIEWS = {
  ...text,
  ...writing,
  ...job,
  ...preview,
  ...pages,
  ...questions,
  ...readme,
  ...first,
};
