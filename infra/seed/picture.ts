import { crc32, deflateSync } from "node:zlib";
import { seeded } from "./random.ts";

/** A drawn leaf with spots, as the demo's photograph of a sign: nobody's picture, a few kilobytes. */

const WIDTH = 360;
const HEIGHT = 270;
const SPOTS = 26;

const SOIL = [92, 78, 62];
const LEAF = [72, 112, 58];
const VEIN = [104, 142, 84];
const HALO = [178, 168, 86];
const SPOT = [66, 46, 34];

/** The same day gives the same picture. */
export function pictureOfLeaf(day: string): Buffer {
  const { uniform, normal } = seeded(Number(day.replaceAll("-", "")));
  const spots = Array.from({ length: SPOTS }, () => ({
    x: WIDTH / 2 + 70 * normal(),
    y: HEIGHT / 2 + 34 * normal(),
    r: 3 + 6 * uniform(),
  }));
  const colourAt = (x: number, y: number): number[] => {
    const along = (x - WIDTH / 2) / (WIDTH * 0.44);
    const across = (y - HEIGHT / 2) / (HEIGHT * 0.36);
    const halfWidth = Math.max(0, 1 - along * along) ** 0.8;
    if (Math.abs(along) >= 1 || Math.abs(across) > halfWidth) return SOIL;
    for (const spot of spots) {
      const far = Math.hypot(x - spot.x, y - spot.y) / spot.r;
      if (far < 1) return SPOT;
      if (far < 1.7) return HALO;
    }
    const side = Math.abs((along + 0.45 * Math.abs(across)) * 7);
    return Math.abs(across) < 0.03 || side - Math.floor(side) < 0.07 ? VEIN : LEAF;
  };
  const rows: Buffer[] = [];
  for (let y = 0; y < HEIGHT; y += 1) {
    const row = Buffer.alloc(1 + WIDTH * 3);
    for (let x = 0; x < WIDTH; x += 1) {
      const grain = 5 * normal();
      colourAt(x, y).forEach((value, i) => {
        row[1 + x * 3 + i] = Math.max(0, Math.min(255, Math.round(value + grain)));
      });
    }
    rows.push(row);
  }
  return png(Buffer.concat(rows));
}

/** PNG of 8-bit RGB rows, each led by its filter's number. */
function png(rows: Buffer): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(WIDTH, 0);
  head.writeUInt32BE(HEIGHT, 4);
  head.set([8, 2, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    chunk("IHDR", head),
    chunk("IDAT", deflateSync(rows)),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

function chunk(name: string, data: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(name, "latin1"), data]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc32(named));
  return Buffer.concat([length, named, check]);
}
