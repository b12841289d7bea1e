/** A table with its metadata for the examples of rules; each part can be replaced. */
export function tableExample(parts: { csv?: string; columns?: readonly object[]; table?: object } = {}): {
  csv: string;
  metadata: string;
} {
  const columns = parts.columns ?? [
    { name: "cast", titles: "cast", datatype: "string", required: true },
    { name: "depth", titles: "depth", datatype: "double" },
  ];
  return {
    csv: parts.csv ?? "cast,depth\r\na,1.5\r\nb,\r\n",
    metadata: JSON.stringify({
      "@context": "http://www.w3.org/ns/csvw",
      url: "example.csv",
      tableSchema: { columns },
      ...parts.table,
    }),
  };
}
