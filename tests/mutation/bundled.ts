/** Where the tests of the room lie as few files, with the source that they run: reading hundreds of modules anew would be most of the time of a change. */
export const bundled = "coverage/bundled";
