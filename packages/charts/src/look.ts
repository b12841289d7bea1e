/**
 * The look of our pictures. Direction is told by pattern first (solid, dashed, dotted) and by lightness second, so
 * that a black-and-white print and colour-blind eyes see the same. Flags are told by shape alone.
 */
export const look = {
  // of one width on all systems
  font: '"Helvetica Neue", Arial, "Liberation Sans", sans-serif',
  paper: "#ffffff",
  ink: "#14213d",
  quiet: "#4a5568",
  grid: "#d5dae3",
  frame: "#8b95a7",
  hatch: "#c3cad6",
  land: "#e7e3d6",
  coast: "#7d7a6c",
  /** From the first cast in time to the last: lighter to darker. */
  order: ["#9aabb8", "#14213d"],
  /** From the smallest value to the largest: light to dark, one hue. */
  tones: ["#eef2ee", "#7fa3ab", "#17384d"],
  lines: {
    down: { stroke: "#14213d", "stroke-width": "1.8" },
    all: { stroke: "#14213d", "stroke-width": "1.8" },
    up: { stroke: "#b0660f", "stroke-width": "1.5", "stroke-dasharray": "6 3.5" },
    rest: {
      stroke: "#6b7687",
      "stroke-width": "1.4",
      "stroke-dasharray": "0.1 3.2",
      "stroke-linecap": "round",
    },
  },
} as const;
