import { storedName } from "../classic/check-content.ts";

/** The part of a name that tells its group, with the stroke at its end; "" in the root group. */
export const groupOf = (name: string): string => name.slice(0, name.lastIndexOf("/") + 1);

/** The name inside its group. */
export const ownName = (name: string): string => name.slice(name.lastIndexOf("/") + 1);

/** Path of an object in the file; "" is the root group. */
export const storedPath = (name: string): string => `/${storedName(name)}`;
