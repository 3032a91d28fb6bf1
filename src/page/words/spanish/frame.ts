// The frame: its views, what stands in the way, the bar of figures.
import {rich} from '../phrase';
import type {Parts, Texts} from '../phrase';

const views = {
    tour: {name: 'Visita', says: 'cuarto por cuarto'},
    loans: {name: 'Préstamos', says: 'lado a lado'},
    budget: {name: 'Presupuesto', says: 'hasta cuánto'},
    site: {name: 'Lotes', says: 'lotes y planos'},
    schedule: {name: 'Pagos', says: 'año por año'},
    sheet: {name: 'Hoja', says: 'para imprimir'},
    check: {name: 'Cifras', says: 'para el prestamista'},
};

export const frame = {
    own_name: 'Español',
    languages_label: 'Idioma',
    views,
    views_label: 'Vistas',
    title: ({community}: Texts<'community'>) => `${community} – quoin`,
    skip: 'Ir al contenido',
    book: ({builder, version}: Texts<'builder' | 'version'>) =>
        `${builder}. Lista de precios ${version}`,
    book_ended: ({on}: Texts<'on'>) => `terminó el ${on}`,
    opening: 'Abriendo la lista de precios…',
    working: 'Calculando el precio de la vivienda…',
    comes_back: 'La vivienda vuelve aquí cuando eso se corrija.',

    gone:
        'El programa quoin no responde. Inícielo de nuevo donde se inició (quoin serve) y esta ' +
        'página sigue por sí sola. No se pierde nada de lo que escribió.',
    keeps_nothing:
        'Este navegador no puede guardar nada. Guarde al comprador como archivo antes de salir.',
    nothing_changed: ({why}: Texts<'why'>) => `No se cambió nada: ${why}.`,
    found_expected: ({found, expected}: Texts<'found' | 'expected'>) => `${found}: ${expected}`,
    stale: 'Las cifras de abajo son de antes de este cambio. Lo que debe corregir:',
    no_answer: 'Esta consulta no se puede responder como está. Lo que debe corregir:',
    problem: ({found, expected, advice}: Texts<'found' | 'expected' | 'advice'>) =>
        `${found}. ${expected && `Se esperaba: ${expected}. `}${advice}`,
    refused: 'El programa no pudo crear este archivo.',

    code_title: 'Código de acceso',
    code_asked:
        'Otras computadoras pueden llegar a este programa, así que pide un código. Lo mostró ' +
        'cuando se inició.',
    code_wrong:
        'Ese no es el código correcto. Búsquelo después de #code= en la dirección que mostró el ' +
        'programa. Cada inicio del programa crea un código nuevo.',
    code: 'Código',
    code_open: 'Abrir',

    whose_home: '¿De quién es la vivienda?',
    no_home: 'Aún no hay una vivienda que mostrar',
    no_home_why:
        'Ninguna lista de precios de la carpeta que sirve quoin tiene una vivienda cuyo precio se ' +
        'pueda calcular. Hace falta un lote disponible en el que quepa un plano, y tasas vigentes ' +
        'en sus fechas. Para ver los ejemplos, inicie quoin serve sin una carpeta.',

    bar_label: 'Precio, pago y efectivo de esta vivienda',
    in_hand: 'Préstamo que se muestra',
    change_loan: 'Cambiar este préstamo…',
    undo_keys: 'Ctrl+Z',
    redo_keys: 'Ctrl+Shift+Z',
    figures_under: ({loan}: Texts<'loan'>) => `Cifras de ${loan}`,
    loan: 'Préstamo…',
    sums: ({price, cash}: Parts<'price' | 'cash'>) =>
        rich`${price} en el precio${cash && rich` · ${cash} de efectivo`}`,

    whole_name: 'Nombre completo',
    what_to_know: 'Lo que debe saber',
    what_to_know_says: 'estimaciones, tasas y reglas detrás de estas cifras',
};
