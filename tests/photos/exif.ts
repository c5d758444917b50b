// EXIF built by hand from its published layout (TIFF 6.0; CIPA DC-008), so that no writer of pictures stands
// between a test and what it says.

/** A tag: its id, its type (2 text, 3 short, 4 long, 5 fraction, 7 bytes) and its value. */
type Tag = { id: number; type: 2 | 3 | 4 | 5 | 7; value: Buffer; count: number };

export const text = (id: number, words: string): Tag => {
  const value = Buffer.from(`${words}\0`, 'latin1');
  return { id, type: 2, value, count: value.length };
};
export const short = (id: number, figure: number): Tag => ({ id, type: 3, value: u16(figure), count: 1 });
export const long = (id: number, figure: number): Tag => ({ id, type: 4, value: u32(figure), count: 1 });
export const fractions = (id: number, ...figures: number[]): Tag => {
  const value = Buffer.concat(figures.flatMap((figure) => [u32(figure), u32(1)]));
  return { id, type: 5, value, count: figures.length };
};
export const bytes = (id: number, value: Buffer): Tag => ({ id, type: 7, value, count: value.length });

/** What a camera writes: tags of the picture, of the shot, of the place, and a thumbnail (a JPEG). */
export type Exif = { picture?: Tag[]; shot?: Tag[]; place?: Tag[]; thumbnail?: Buffer };

/** The TIFF structure of EXIF, big-endian. */
export function exif({ picture = [], shot = [], place = [], thumbnail }: Exif): Buffer {
  const heads = (at: { shot: number; place: number }) => [
    ...picture,
    ...(shot.length > 0 ? [long(0x8769, at.shot)] : []),
    ...(place.length > 0 ? [long(0x8825, at.place)] : []),
  ];
  const first = directory(heads({ shot: 0, place: 0 }), 8, 0).length;
  const at = { shot: 8 + first, place: 0 };
  const shots = directory(shot, at.shot, 0);
  at.place = at.shot + shots.length;
  const places = directory(place, at.place, 0);
  const second = at.place + places.length;
  const parts = [
    Buffer.from('MM\0*\0\0\0\x08', 'latin1'),
    directory(heads(at), 8, thumbnail ? second : 0),
    shots,
    places,
  ];
  if (thumbnail) {
    const tags = (offset: number) => [long(0x0201, offset), long(0x0202, thumbnail.length)];
    const size = directory(tags(0), second, 0).length;
    parts.push(directory(tags(second + size), second, 0), thumbnail);
  }
  return Buffer.concat(parts);
}

function directory(tags: readonly Tag[], offset: number, next: number): Buffer {
  const entries: Buffer[] = [u16(tags.length)];
  const far: Buffer[] = [];
  let at = offset + 2 + 12 * tags.length + 4;
  for (const { id, type, value, count } of [...tags].sort((a, b) => a.id - b.id)) {
    const near = value.length <= 4;
    entries.push(u16(id), u16(type), u32(count), near ? Buffer.concat([value, Buffer.alloc(4)], 4) : u32(at));
    if (near) continue;
    const even = value.length % 2 ? Buffer.concat([value, Buffer.alloc(1)]) : value;
    far.push(even);
    at += even.length;
  }
  return Buffer.concat([...entries, u32(next), ...far]);
}

function u16(figure: number): Buffer {
  const buffer = Buffer.alloc(2);
  buffer.writeUInt16BE(figure);
  return buffer;
}

export function u32(figure: number): Buffer {
  const buffer = Buffer.alloc(4);
  buffer.writeUInt32BE(figure);
  return buffer;
}
