export { type PictureOptions, profilePicture } from "./profile-picture.ts";
