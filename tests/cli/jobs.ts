/** Jobs that the tests of the command line and of the documents share. All names and prices are invented. */

/** Everything that a price needs, with figures that no other text holds by chance. */
export const FIRM = `perpend 1

use uk

firm "Marl & Pike Brickwork"
  address     "7 Sluice Row"
  address     "Oddmouth"
  phone       "01632 960 555"
  email       "pike@marl-pike.example"
  tax-number  "GB 111 2222 33"
  terms       "Payment within 10 days."

brick secret-red "Oddmouth red facing"
  size   215 x 102.5 x 65 mm
  price  £0.97 each
  waste  6%

material cement
  pack  25 kg bag at £6.43

material lime
  pack  25 kg bag at £9.21

material sand
  pack  850 kg bag at £54.37

labour
  bricklayer  £28.70 per h
  labourer    £17.30 per h
  gang        1 bricklayer + 0.5 labourer

travel
  run  2 x 13 miles per day at £0.47 per mile

cost hidden-skip "Spoil away" 1 at £239.83

price
  overhead  11.7%
  profit    23.3%
  round     £5
  stage     "With the order" 30%
  stage     "On completion" rest
`;

export const JOB = `perpend 1

job "Long garden wall"
  ref     26-107
  client  "T. Alder"
  site    "4 Weir Lane"
  date    2026-01-15
  valid   30 days

use "firm.perp"

wall walnorth "Wall along the lane"
  brick   secret-red
  bond    flemish
  thick   1 brick
  length  5 m
  height  12 courses
  note    "The hedge is cut back by the owner."

  opening gatehole "Side gate"
    from   left 2 m
    width  1010 mm

wall walsouth
  brick   secret-red
  length  3.25 m
  height  8 courses
`;

/** Priced, with a range in it. */
export const RANGED = `perpend 1

job "Frost damage"

use "firm.perp"

repair frost "Frosted length"
  brick    secret-red
  rebuild  4.2 m x 12 courses
  salvage  60..75%
`;

/** A length is still to be measured. */
export const HALF = JOB.replace('length  3.25 m', 'length  ?');

/** A line that cannot be read. */
export const WRONG = JOB.replace('length  3.25 m', 'lenght  3.25 m');

export const FILES = {
  'firm.perp': FIRM,
  'job.perp': JOB,
  'ranged.perp': RANGED,
  'half.perp': HALF,
  'wrong.perp': WRONG,
};
