// What only the file that was taken home says, in the Spanish of the United States.
import type {HomeWords} from './catalogue';

export const spanish: HomeWords = {
    damaged:
        'Este archivo está dañado: una parte se perdió o cambió en el camino. No se guíe por sus ' +
        'cifras. Pida uno nuevo a la oficina de ventas.',
    too_old:
        'Aquí puede leer la hoja. Para cambiar opciones y préstamos, abra este archivo en un ' +
        'navegador actual: Chrome, Edge, Firefox o Safari.',

    gone: 'Las cifras no se pueden calcular aquí en este momento. La página lo intenta de nuevo sola.',
    no_home:
        'Este archivo no tiene ninguna casa con precio. Pida uno nuevo a la oficina de ventas.',

    as_of: ({day, rates_ended, book_ended}) => {
        const ended = [
            rates_ended && `las tasas vencieron el ${rates_ended}`,
            book_ended && `los precios vencieron el ${book_ended}`,
        ].filter(Boolean);
        return ended.length > 0 ? `al ${day} (${ended.join(', ')})` : day;
    },

    sheet: 'Su hoja',
    menu: 'Este archivo…',
    menu_title: 'Este archivo',
    back: 'Volver a lo enviado',
    back_done: 'De vuelta a lo que envió la oficina de ventas',

    copy: 'Guardar una copia',
    copy_says: 'un archivo nuevo con sus cambios, para usted o alguien de confianza',
    copied: ({file}) => `Guardado como ${file}. Se abre con sus cambios.`,
    send: 'Enviar a la oficina de ventas',
    send_says: 'un archivo pequeño con lo que cambió: opciones, lote y préstamos',
    send_name: 'Con el nombre',
    sent: ({file}) =>
        `Guardado como ${file}. Envíelo a la oficina de ventas. Contiene lo que usted cambió. No ` +
        'contiene ingresos, deudas, puntaje de crédito ni efectivo.',
    send_nothing: 'Todavía no cambió nada, así que no hay nada que enviar.',
    forget: 'Olvidar mis cambios',
    forget_says: 'los borra de este navegador; el archivo queda como llegó',
    forgotten: 'Sus cambios se borraron de este navegador.',
    licenses: 'Licencias',
    licenses_says: 'del software libre y las letras de este archivo',

    long: {
        fit: 'Buscando lo que cabe…',
        credit: 'Probando otros puntajes de crédito…',
        other: 'Calculando…',
    },
    stop: 'Detener',
    stopped: 'Detenido',
    stopped_advice: 'Cambie algo y empieza de nuevo.',
};
