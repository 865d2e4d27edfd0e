/** Where the work stands and how it stands: nothing is counted by these lines, cautions go by them. */
import { choice, either, line, name, quantity } from '../slots';

const LEANS = line(
  'leans',
  [quantity('leans', 'length')],
  'How far its top stands out of plumb, measured on site.',
  'leans 40 mm',
  { unless: 'upright' },
);

const BOUNDARY = line(
  'boundary',
  [quantity('distance', 'length')],
  'How far it is from the boundary of the land; 0 mm on the line itself.',
  'boundary 0.4 m',
  { unless: 'not known' },
);

const ROAD = line(
  'road',
  [quantity('distance', 'length')],
  'How far it is from a road, its pavement counted with it; 0 mm beside it.',
  'road 1.5 m',
  { unless: 'not known' },
);

/** In this order in every piece of work. */
export const SITE = [LEANS, BOUNDARY, ROAD];

export const STANDS_IN = line(
  'stands-in',
  [either([choice('mortar', 'lime', 'clay', 'cement')], [name('mix', 'mix')])],
  'The mortar that the standing work was laid in: what it is, or a mix by its name.',
  'stands-in lime',
  { unless: 'the mix of the wall it is in, else not known' },
);
