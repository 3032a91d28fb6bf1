// Around the sheet to take home, which the engine writes.
export const sheet = {
    writing: 'Preparing the sheet…',
    title: 'A sheet to take home',
    print: 'Print',
};
