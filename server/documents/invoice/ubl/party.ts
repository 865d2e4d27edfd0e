/** Who sells and who buys, as UBL has them. */
import type { Party } from '../types';
import { branch, leaf, type Xml } from './xml';

/** @param taxed whether the invoice may name tax numbers: one outside the tax must not (BR-O-02) */
export function partyXml(party: Party, taxed: boolean): Xml {
  return branch(
    'cac:Party',
    branch('cac:PartyName', leaf('cbc:Name', party.name)),
    addressXml(party),
    taxed ? taxXml(party) : '',
    branch(
      'cac:PartyLegalEntity',
      leaf('cbc:RegistrationName', party.name),
      leaf('cbc:CompanyID', party.registration),
    ),
    branch(
      'cac:Contact',
      leaf('cbc:Telephone', party.phone),
      leaf('cbc:ElectronicMail', party.email),
    ),
  );
}

function addressXml({ address, town, postcode, country }: Party): Xml {
  const [street = '', second = '', ...rest] = address;
  return branch(
    'cac:PostalAddress',
    leaf('cbc:StreetName', street),
    leaf('cbc:AdditionalStreetName', second),
    leaf('cbc:CityName', town),
    leaf('cbc:PostalZone', postcode),
    branch('cac:AddressLine', leaf('cbc:Line', rest.join(', '))),
    branch('cac:Country', leaf('cbc:IdentificationCode', country)),
  );
}

function taxXml({ taxNumber, country }: Party): Xml {
  if (!taxNumber) return '';
  const scheme = branch('cac:TaxScheme', leaf('cbc:ID', 'VAT'));
  return branch('cac:PartyTaxScheme', leaf('cbc:CompanyID', vatId(taxNumber, country)), scheme);
}

/** With its country before it (BR-CO-09), without the spaces that people write. */
function vatId(number: string, country: string): string {
  const bare = number.replace(/[\s.-]/g, '').toUpperCase();
  return /^[A-Z]{2}/.test(bare) ? bare : `${country}${bare}`;
}
