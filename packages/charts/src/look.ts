/**
 * The look of our pictures. Direction is told by pattern first (solid, dashed, dotted) and by lightness second, so
 * that a black-and-white print and colour-blind eyes see the same. Flags are told by shape alone.
 */
export const look = {
  font: "sans-serif",
  paper: "#ffffff",
  ink: "#14213d",
  quiet: "#4a5568",
  grid: "#d5dae3",
  frame: "#8b95a7",
  hatch: "#c3cad6",
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
