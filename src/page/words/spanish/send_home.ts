// Enviar a casa: el archivo para el teléfono del comprador.
import type {Texts} from '../phrase';

export const send_home = {
    title: 'Enviar a casa',
    open: 'Enviar a casa…',
    menu_says: 'un archivo para su teléfono: la hoja, esta casa, estos préstamos',
    says:
        'Un archivo con la hoja, esta casa y estos préstamos. Se abre en cualquier teléfono, ' +
        'también sin red, y calcula de nuevo lo que cambien.',
    stays:
        'Otros compradores, las notas de oficina y quién lo preparó se quedan aquí. En lugar del ' +
        'puntaje de crédito va el menor con las mismas cifras.',
    along: 'Incluir, si el comprador está de acuerdo',
    privates: {
        score: 'Puntaje de crédito',
        income: 'Ingresos y hogar',
        debts: 'Deudas',
        cash: 'Efectivo',
    },
    make: 'Crear el archivo',
    saved: ({file}: Texts<'file'>) => `Guardado como ${file}; envíelo como enviaría una foto.`,
};
