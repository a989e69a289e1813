/** CRC-32 of ISO 3309, polynomial 0xEDB88320 reversed, as ZIP uses it; a byte at a time by table. */
export function crc32(bytes: Uint8Array): number {
  const table = Uint32Array.from({ length: 256 }, (_, byte) => {
    let crc = byte;
    for (let k = 0; k < 8; k++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
    return crc;
  });
  let crc = 0xffffffff;
  for (const byte of bytes) crc = (crc >>> 8) ^ table[(crc ^ byte) & 0xff];
  return (crc ^ 0xffffffff) >>> 0;
}
