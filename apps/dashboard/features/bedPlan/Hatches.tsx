/** Fillings that stay apart in black and white; the letter beside each says the same. `size` is the side of a tile. */
export function Hatches({ prefix, size }: { prefix: string; size: number }) {
  return (
    <defs>
      {HATCHES.map((d, i) => (
        <pattern
          key={d}
          id={`${prefix}-${i}`}
          width="8"
          height="8"
          patternUnits="userSpaceOnUse"
          patternTransform={`scale(${size / 8})`}
        >
          <path className="hatch" d={d} />
        </pattern>
      ))}
    </defs>
  );
}

const HATCHES = [
  "M-2 2 2 -2M0 8 8 0M6 10 10 6",
  "M0 4H8",
  "M3 3h2v2h-2z",
  "M-2 6 2 10M0 0 8 8M6 -2 10 2",
  "M4 0V8",
  "M0 0 8 8M0 8 8 0",
  "M1 1h1.6v1.6h-1.6zM5 5h1.6v1.6h-1.6z",
  "M0 4H8M4 0V8",
  "M0 2H8M0 6H8",
  "M4 1 7 4 4 7 1 4Z",
];

/** One filling after another; past the last they begin again, and the letter alone tells them apart. */
export const hatchOf = (prefix: string, variety: number) => `url(#${prefix}-${variety % HATCHES.length})`;
