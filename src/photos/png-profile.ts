import { crc32, deflateSync } from 'node:zlib';

const HEAD = 8 + 25; // Signature, then IHDR with its length, name, 13 bytes and checksum.

/**
 * The same PNG with an ICC profile in it, so that its numbers are read as the colours that they mean.
 * Source: PNG (Third Edition), W3C, 11.3.2.3 "iCCP": name, 0, method 0, deflated profile; before PLTE and IDAT.
 */
export function pngWithProfile(png: Buffer, profile: Buffer): Buffer {
  const body = Buffer.concat([
    Buffer.from('iCCP'),
    Buffer.from('camera\0\0', 'latin1'),
    deflateSync(profile),
  ]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(body.length - 4);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([png.subarray(0, HEAD), length, body, sum, png.subarray(HEAD)]);
}
