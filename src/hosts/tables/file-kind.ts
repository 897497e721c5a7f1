/** What a file is by its first bytes, whatever it is called. */
export type FileKind =
  'zip' | 'opendocument' | 'old-office' | 'encrypted-office' | 'utf-16' | 'binary' | 'text';

const ZIP = [0x50, 0x4b, 0x03, 0x04];
/** OpenDocument 1.2 part 3, 3.3: the first part of the zip, as it stands, says what it is. */
const OPEN_DOCUMENT = 'mimetypeapplication/vnd.oasis.opendocument';
const MIME_TYPE_WITHIN = 120;
/** Compound file: [MS-CFB] section 2.2. An .xls is one, and so is any workbook with a password. */
const COMPOUND = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
/** [MS-OFFCRYPTO] section 2.3.4.4: the stream that holds the workbook behind a password. */
const ENCRYPTED_STREAM = 'EncryptedPackage';

/** Tells what the bytes are; only their beginning and, in a compound file, a name are looked at. */
export function fileKind(bytes: Uint8Array): FileKind {
  if (startsWith(bytes, ZIP)) {
    return latin1(bytes.subarray(0, MIME_TYPE_WITHIN)).includes(OPEN_DOCUMENT)
      ? 'opendocument'
      : 'zip';
  }
  if (startsWith(bytes, COMPOUND)) {
    // A compound file keeps its names in UTF-16; Latin-1 shows every byte as one character.
    const name = Array.from(ENCRYPTED_STREAM).join('\0');
    return latin1(bytes).includes(name) ? 'encrypted-office' : 'old-office';
  }
  if (startsWith(bytes, [0xff, 0xfe]) || startsWith(bytes, [0xfe, 0xff])) return 'utf-16';
  return bytes.includes(0) ? 'binary' : 'text';
}

function latin1(bytes: Uint8Array): string {
  const chunk = 8192;
  let text = '';
  for (let at = 0; at < bytes.length; at += chunk) {
    text += String.fromCharCode(...bytes.subarray(at, at + chunk));
  }
  return text;
}

function startsWith(bytes: Uint8Array, first: readonly number[]): boolean {
  return first.every((byte, index) => bytes[index] === byte);
}
