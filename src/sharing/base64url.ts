/** Base64 with the URL alphabet of RFC 4648 section 5, without padding. */

const ALPHABET = /^[A-Za-z0-9_-]*$/;

export function isBase64Url(text: string): boolean {
  return ALPHABET.test(text) && text.length % 4 !== 1;
}

export function toBase64Url(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/** Call only with text that `isBase64Url` accepts. */
export function fromBase64Url(text: string): Uint8Array {
  const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(binary, (character) => character.charCodeAt(0));
}
