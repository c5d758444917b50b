// The words that go into a picture when it is handed over, so that it still says what it shows when it is found apart
// from its record: XMP (ISO 16684-1) in the fields of the IPTC Photo Metadata Standard.

/** All of it is public. `day` is the day it was taken. */
export type PictureWords = { title: string; caption: string; alt: string; day: string; by: string };

/** The XMP packet. */
export function xmpOf({ title, caption, alt, day, by }: PictureWords): string {
  const inLanguage = (field: string, words: string) =>
    words === ''
      ? ''
      : `<${field}><rdf:Alt><rdf:li xml:lang="x-default">${escaped(words)}</rdf:li></rdf:Alt></${field}>`;
  return [
    '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">',
    '<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"',
    ' xmlns:photoshop="http://ns.adobe.com/photoshop/1.0/"',
    ' xmlns:Iptc4xmpCore="http://iptc.org/std/Iptc4xmpCore/1.0/xmlns/">',
    inLanguage('dc:title', title),
    inLanguage('dc:description', caption),
    inLanguage('Iptc4xmpCore:AltTextAccessibility', alt),
    `<dc:creator><rdf:Seq><rdf:li>${escaped(by)}</rdf:li></rdf:Seq></dc:creator>`,
    `<photoshop:DateCreated>${escaped(day)}</photoshop:DateCreated>`,
    '</rdf:Description></rdf:RDF></x:xmpmeta>',
  ].join('');
}

const escaped = (text: string) =>
  text
    .replace(/\p{Cc}/gu, ' ')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
