/** How cells look: bold or not, and with how many decimals a figure is shown. */

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';

/** Numbers of formats below this are the program's own (ECMA-376, 18.8.30). */
const OWN = 164;

interface Look {
  readonly bold: boolean;
  readonly wrap: boolean;
  /** Of a figure: how many decimals are shown; nothing for text. */
  readonly decimals: number | undefined;
}

/** Looks as they come up, each once. */
export class Formats {
  private readonly looks = new Map<string, Look>();
  private readonly numbers = new Map<number, number>();

  /** Its number, by which a cell names it. Nought is plain text. */
  of(look: Look): number {
    const key = JSON.stringify(look);
    if (!this.looks.has(key)) this.looks.set(key, look);
    if (look.decimals !== undefined && !this.numbers.has(look.decimals))
      this.numbers.set(look.decimals, OWN + this.numbers.size);
    return [...this.looks.keys()].indexOf(key) + 1;
  }

  xml(): string {
    const formats = [...this.numbers].map(([decimals, id]) => {
      const code = decimals ? `#,##0.${'0'.repeat(decimals)}` : '#,##0';
      return `<numFmt numFmtId="${id}" formatCode="${code}"/>`;
    });
    const cells = [...this.looks.values()].map((look) => this.cell(look));
    const fonts = ['<font><sz val="10"/><name val="Arial"/></font>'];
    fonts.push('<font><b/><sz val="10"/><name val="Arial"/></font>');
    return [
      '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n',
      `<styleSheet xmlns="${MAIN}">`,
      formats.length ? `<numFmts count="${formats.length}">${formats.join('')}</numFmts>` : '',
      `<fonts count="2">${fonts.join('')}</fonts>`,
      '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>',
      '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>',
      '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>',
      `<cellXfs count="${cells.length + 1}"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>${cells.join('')}</cellXfs>`,
      '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles>',
      '</styleSheet>',
    ].join('');
  }

  private cell({ bold, wrap, decimals }: Look): string {
    // 49 is text: what looks like a figure or a formula stays what it is.
    const format = decimals === undefined ? 49 : this.numbers.get(decimals)!;
    const align = `<alignment vertical="top"${wrap ? ' wrapText="1"' : ''}/>`;
    return `<xf numFmtId="${format}" fontId="${bold ? 1 : 0}" fillId="0" borderId="0" xfId="0" applyNumberFormat="1" applyFont="1" applyAlignment="1">${align}</xf>`;
  }
}
