/** What the program tells about files, photos and the place where bodies are kept. */
export const messages = {
  copyOf: (name: string) => `${name}, copy`,
  ofNewerProgram:
    'what it keeps was last used by a newer version of this program; load the page again to use that',
  copyHere:
    'This body is open in another tab too. It goes on here as a copy, so that neither tab writes over the other; both stand under Bodies and earlier states.',
  copyThere:
    'This body is open in another tab too. It goes on there as a copy, so that neither tab writes over the other; both stand under Bodies and earlier states.',
  keptUnreadable: (isAside: boolean) =>
    `What was kept in this browser could not be read${isAside ? ' and was put aside' : '; there is no room to put it aside, so save it to a file now'}. A demo body is open instead.`,
  earlierUnreadable: (isAside: boolean) =>
    `Some of the earlier states kept in this browser could not be read${isAside ? ' and were put aside' : '; there is no room to put them aside, so save them to a file now'}. The project itself is not touched by this.`,
  noDatabase: (reason: string) =>
    `This browser does not keep several bodies or photos here (${reason}). Save each body to a file before you open another.`,
  photoUnreadable: (sides: string) =>
    `A photo of this body could not be read from this browser (${sides}). It stays where it is until another is chosen.`,
  refusesProject: (reason: string) =>
    `This browser refuses to keep the project (${reason}). Use Save often; nothing else is lost.`,
  refusesBody: (reason: string) =>
    `This browser refuses to keep the body among the others (${reason}). Save it to a file; what is open is not lost.`,
  refusesPhoto: (reason: string) =>
    `This browser refuses to keep the photo (${reason}). It stays under the body until the page is closed.`,
  cannotRead: 'it cannot be read',
  notOpened: (file: string) => `${file} could not be opened. Your present project is unchanged.`,
  savedTo: (file: string) => `Saved to ${file}.`,
  handedOver: (file: string, size: string) =>
    `Saved: ${file}, ${size}. Your browser keeps it with its downloads.`,
  undone: (step: string) => `Undone: ${step}.`,
  redone: (step: string) => `Done again: ${step}.`,
  notWritten: (file: string, reason: string) =>
    `${file} could not be written (${reason}). Save again to choose another place; nothing is lost.`,
  noBody: (file: string) => `${file} holds no body to compare with.`,
  notMade: 'The file could not be made.',
  tooLarge: (file: string, size: string) =>
    `${file} is ${size} MB. A project file is smaller than 5 MB, so this is another kind of file. Nothing was changed.`,
  notRead: (file: string, reason: string) => `${file} could not be read (${reason}). Nothing was changed.`,
  photoTooLarge: (file: string, size: string) =>
    `${file} is ${size} MB; a photo may have 30 MB at most. Save it smaller and try again.`,
  noPicture: (file: string) =>
    `${file} is no picture this browser can read. JPEG, PNG and WebP are sure to work.`,
  photoSize: (file: string, width: number, height: number, least: number) =>
    `${file} has ${width} × ${height} pixels; a photo needs ${least} each way at least, and 120 million in all at most.`,
  updated:
    'There is a newer version of this program. This page goes on with the one it was opened with; load it again to use the newer. What you typed is kept.',
  noLanguage: (language: string) =>
    `${language} could not be loaded: the network is away, or the program has changed. Load the page again.`,
};
