/** Chunks of a PNG that its pixels need or that say how their colours are meant (ISO/IEC 15948, 11.2 and 11.3). */
const PNG_PIXELS = new Set(['IHDR', 'PLTE', 'IDAT', 'IEND', 'tRNS', 'gAMA', 'cHRM', 'sRGB', 'iCCP', 'sBIT', 'bKGD', 'pHYs']);
/** Of a WebP (RFC 9649, 2.7). */
const WEBP_PIXELS = new Set(['VP8 ', 'VP8L', 'VP8X', 'ALPH', 'ICCP', 'ANIM', 'ANMF']);
/** Boxes at the top of an AVIF (ISO/IEC 14496-12, 4.2 and 8.11); what `meta` holds is told by whoever reads its metadata. */
const AVIF_PIXELS = new Set(['ftyp', 'meta', 'mdat']);
const PNG_SIGNATURE = 8; // bytes
const PNG_AROUND = 12; // length, kind and checksum of a chunk
const RIFF_HEAD = 8; // "RIFF" and its size
const WEBP_FIRST = 12; // behind "WEBP"
const BOX_HEAD = 8; // size and kind

/** Whether a PNG carries a chunk beyond its pixels and their colours, or bytes behind its last one. */
export function hasMoreInPng(bytes: Uint8Array): boolean {
  return hasMore(bytes, PNG_SIGNATURE, PNG_PIXELS, (view, at) => ({ kind: kindAt(view, at + 4), size: view.getUint32(at) + PNG_AROUND }));
}

/** Whether a WebP carries a chunk beyond its pixels and their colours, or bytes behind what its head announces. */
export function hasMoreInWebp(bytes: Uint8Array): boolean {
  const view = viewOf(bytes);
  if (bytes.length < WEBP_FIRST || view.getUint32(4, true) + RIFF_HEAD !== bytes.length) return true;
  return hasMore(bytes, WEBP_FIRST, WEBP_PIXELS, (_, at) => {
    const size = view.getUint32(at + 4, true);
    return { kind: kindAt(view, at), size: RIFF_HEAD + size + (size % 2) };
  });
}

/** Whether an AVIF carries a box at its top beyond its pixels. */
export function hasMoreInAvif(bytes: Uint8Array): boolean {
  return hasMore(bytes, 0, AVIF_PIXELS, (view, at) => ({ kind: kindAt(view, at + 4), size: view.getUint32(at) }));
}

/** What is not laid out as expected counts as more: the picture is then written anew. */
function hasMore(
  bytes: Uint8Array,
  first: number,
  pixels: ReadonlySet<string>,
  read: (view: DataView, at: number) => { kind: string; size: number },
): boolean {
  const view = viewOf(bytes);
  let at = first;
  while (at + BOX_HEAD <= bytes.length) {
    const { kind, size } = read(view, at);
    if (!pixels.has(kind) || size < BOX_HEAD) return true;
    at += size;
    if (kind === 'IEND') break;
  }
  return at !== bytes.length;
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

function kindAt(view: DataView, at: number): string {
  return String.fromCharCode(view.getUint8(at), view.getUint8(at + 1), view.getUint8(at + 2), view.getUint8(at + 3));
}
