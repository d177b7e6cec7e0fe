/**
 * How published pictures are made. Chosen by measurement on this series' plates and a noisy twelve-megapixel photo at 1600
 * wide: AVIF at effort 1 took 0.09 to 0.26 s, a third less time than effort 2 for the same bytes; effort 0 needed twice the
 * bytes on line drawings; effort 4 took eight times as long for a tenth less.
 */
export const PUBLISHED = {
  /** Widths in pixels: phone, phone with a fine screen, large screen. A picture is never made larger than it is. */
  widths: [480, 800, 1600],
  avif: { quality: 52, effort: 1, chromaSubsampling: '4:2:0' },
  /** For browsers without AVIF, and for feeds. */
  fallback: { width: 800, quality: 74 },
} as const;

export const LIMITS = {
  /** Of one original: twice what the largest phones take. */
  pixels: 250_000_000,
  bytes: 80_000_000,
};
