/** perpend site: the sheet that goes on site. */
import { later } from '../../../shared/phrase';
import { sitePaper } from '../../documents/site/paper';
import { READ } from '../files/as';
import { VERSION } from '../version';
import { paperCommand } from './paper-command';

export const site = paperCommand({
  name: 'site',
  about: later`write the site sheet: drawings, mixes, order, cautions`,
  more: [later`Everything that whoever builds it needs at hand, and no money.`],
  options: [],
  forms: READ,
  paper: ({ job }, head) => sitePaper(job, head, VERSION),
});
