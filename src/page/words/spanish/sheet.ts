// Around the sheet to take home, which the engine writes.
export const sheet = {
    writing: 'Preparando la hoja…',
    title: 'Una hoja para llevar a casa',
    print: 'Imprimir',
};
