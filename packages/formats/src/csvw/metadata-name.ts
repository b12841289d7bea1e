/** Name of the document that describes a CSV file and lies beside it. */
export const metadataName = (path: string): string => `${path}-metadata.json`;
