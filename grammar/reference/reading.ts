/** How text is read: the part of the reference that holds for every line. */
import { numbers } from './numbers';
import { units } from './units';

/** Sections of the reference, in order. */
export function reading(): string[] {
  return [
    EDITION,
    LINES,
    WORDS,
    `${NUMBERS}\n\n${numbers()}\n\n${MORE_NUMBERS}`,
    `${UNITS}\n\n${units()}`,
    MONEY,
    DATES,
    WRONG,
  ];
}

const EDITION = `## Edition

The first line of a file says which edition of the notation it is written in:

\`\`\`perpend
perpend 1
\`\`\`

So an old job keeps its meaning, and its total, when the notation changes.`;

const LINES = `## Lines

A heading begins in the first column. The lines under it begin with a space, and belong to it. A gate or a pier
in a wall is a heading among the wall's lines, and its own lines stand deeper still.

\`\`\`perpend
wall north "North boundary"
  length    7.4 m
  height    18 courses                # a comment runs to the end of its line

  opening gate
    from    left 2.7 m
    width   1010 mm
\`\`\`

- One fact a line. Nothing runs on into the next line.
- The order of lines and of blocks never matters, but for lines that may stand more than once.
- How deep a line is indented matters little: a word that can only stand in one place is read there, and the editor
  says so. The formatter puts the columns right.
- Everything after \`#\` is a comment, except inside a text.
- A line that cannot be read is left out, and the editor says why. Every other line stands.`;

const WORDS = `## Words, names and texts

A **name** is one word that you choose: letters, digits and hyphens, and a letter first: \`north\`, \`harwick-red\`.
Capitals count: \`North\` is another name than \`north\`. \`x\` alone or before a digit is the sign in a size, and no name.

A **text** is anything in double quotes: \`"North boundary"\`. For a quotation mark in it write \`\\"\`, for a backslash
before one \`\\\\\`. Curved quotes, as a telephone writes them, are read too, and the formatter makes them straight.

A **reference** is a word, digits with hyphens such as \`26-041\`, or a text.`;

const NUMBERS = `## Numbers

Every number is exact: decimals and fractions are never rounded before the end. A number that could be read two ways
is an error that offers what it can be, because \`1,450\` is a thousand and more to one reader and less than two to another, and a
wall or a bill would be wrong by a factor of a thousand.`;

const MORE_NUMBERS = `- **Fractions**: \`1/2 brick\`, \`7 5/8 in\`, \`7½ h\`.
- **Feet and inches**: \`6 ft 8 in\`, \`6 ft 7 5/8 in\`.
- **Sizes**: \`450 x 225 mm\`, \`215 x 102.5 x 65 mm\`. The last unit serves every side that has none; \`×\` and \`*\` are read
  as \`x\`.
- **Three decimals of a metre**: \`4165 mm\`, since \`4.165 m\` could be 4165 m. The fix writes it.
- **Ranges**: \`60..75%\`, \`3..4 m\`, \`£220..£260\`, \`450 x 225..300 mm\`, the less first: for any amount, money or side of a size that
  is measured, judged or guessed, of the job, of what it is reckoned by and of the defaults. What is decided or agreed takes
  none, such as a tax rate, a limit or the thickness of a wall, and a finding says why. A range stands for its middle, and the
  price is said with a low and a high, between which the defaults’ \`price-between\` of all jobs alike lie; \`perpend measure\`
  tells which range it most hangs on.
- **Not known yet**: \`?\` in place of a quantity, a size or money means “still to be measured”. A unit may follow it, and
  tells what it is: \`repoint ? m2\`, \`repoint ? m\`. What depends on it says that it is incomplete. In place of a text that
  papers show of the firm or the client it means “still to be filled in”, and so does a text that begins with it and says
  what is wanted: \`town "? Your town"\`. A paper leaves it out, and whoever makes the paper is told.
- A number may have at most 30 digits. More bricks, metres or money than any job could have is taken for a slip and said.`;

const UNITS = `## Units

Every quantity has its unit, with a space before it or none. Metric and imperial may be mixed in one file. The inch
is 25.4 mm and the pound 0.45359237 kg exactly, as the yard and pound agreement of 1959 has them. \`t\` is the tonne; \`ton\` is
the short ton of 2000 lb.`;

const MONEY = `## Money

The currency stands before or after the amount, as a sign or as its code of ISO 4217: \`£6.40\`, \`$12\`, \`6.40 €\`,
\`GBP 6.40\`, \`6.40 EUR\`. Thousands may be marked where pence follow: \`£1,450.00\`; \`£1,450\` alone can be read two ways. A rate is
\`£27.50 per h\`; \`/\` in place of \`per\` is read too.`;

const DATES = `## Dates

Year, month, day: \`2026-03-02\` is the second of March 2026. There is no other way, because there are two ways to
read \`02/03/2026\`. A day that no calendar has, such as \`2026-02-30\`, is an error.`;

const WRONG = `## What is left out

A line that is not written comes from a default, and each line below says which. The defaults
are lines of this same notation, in the job, in a file it uses, or in a library of the country that ships with the
tool. “Not computed yet” means that a line can be written and is kept, but no figure takes account of it so far.`;
