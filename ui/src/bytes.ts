// Bytes on their way through a text boundary: base64, a piece at a time. Never arrays of numbers.

/** A piece as base64. */
export function toBase64(piece: Blob): Promise<string> {
  return new Promise((done, fail) => {
    const reader = new FileReader();
    reader.onerror = () => fail(reader.error);
    reader.onload = () => {
      const address = String(reader.result);
      done(address.slice(address.indexOf(',') + 1));
    };
    reader.readAsDataURL(piece);
  });
}
