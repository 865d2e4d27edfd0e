/** Who is on the papers: the firm, and who is billed. */
import { type LineKind, line, quantity, text, toFill, word } from './slots';

/** Where a party is found: what an invoice needs of both. */
const WHERE: readonly LineKind[] = [
  line('address', [toFill('text')], 'A line of the address.', 'address "4 Kiln Row"', {
    many: true,
  }),
  line('town', [toFill('text')], 'The town of the address.', 'town "Saltmarsh End"'),
  line('postcode', [toFill('text')], 'The code of the address.', 'postcode "SX9 4QD"'),
  line(
    'country',
    [word('country', 'country')],
    'The country, by its ISO 3166 code of two letters.',
    'country GB',
    { unless: 'the defaults’ country' },
  ),
  line('phone', [toFill('text')], 'Telephone.', 'phone "01632 960 144"'),
  line('email', [toFill('text')], 'Address for mail.', 'email "tamsin@reed-brickwork.example"'),
  line('tax-number', [toFill('text')], 'The tax number.', 'tax-number "GB 999 0000 00"'),
  line(
    'registration',
    [toFill('text')],
    'The number in a register of companies or of traders.',
    'registration "00000000"',
  ),
];

export const FIRM: LineKind = line(
  'firm',
  [toFill('name')],
  'The firm, as its papers show it.',
  'firm "Tamsin Reed Brickwork"',
  {
    top: true,
    body: [
      ...WHERE,
      line(
        'logo',
        [text('file')],
        'The firm’s sign, at the head of its papers: a PNG or a JPEG of the same workspace, of 1 MiB at most.',
        'logo "logo.png"',
      ),
      line(
        'account',
        [toFill('text')],
        'The account that invoices are paid to: an IBAN, or what the country’s banks use.',
        'account "GB00 TEST 0000 0000 0000 00"',
      ),
      line(
        'payment',
        [quantity('days', 'day')],
        'How long after an invoice it is to be paid.',
        'payment 14 days',
        { unless: 'the defaults’ payment' },
      ),
      line(
        'terms',
        [toFill('text')],
        'A sentence that every quote ends with.',
        'terms "Payment within 14 days."',
        {
          many: true,
        },
      ),
    ],
  },
);

export const BILL_TO: LineKind = line(
  'bill-to',
  [toFill('name')],
  'Who the invoice goes to, where the client’s name in the job is not enough.',
  'bill-to "Quillbank Growers’ Society"',
  { top: true, body: WHERE },
);
