// The buyers: who is open, whom to open, what is known of one, and what can be done with it.
import {rich} from '../phrase';
import type {Parts, Texts} from '../phrase';

const facts = {
    buyer: 'Nombre: puede ser cualquiera',
    as_of: 'Fecha: el día de los precios y las tasas',
    contract: 'Fecha del contrato',
    closing: 'Fecha de cierre',
    score: 'Puntaje de crédito: cambia tasa y seguro',
    cash: 'Efectivo disponible: nunca en un enlace',
    prepared_by: 'Preparado por',
    originator: 'Originador de préstamos con licencia',
};

export const buyers = {
    unnamed: 'Comprador',
    tabs: 'Compradores',
    this_one: 'Este comprador',
    menu: 'Este comprador…',
    open: 'Abrir…',
    open_title: 'Abrir un comprador',
    closed: ({name}: Parts<'name'>) => rich`Se cerró y se borró de este navegador: ${name}.`,

    turn: 'Girar la pantalla hacia el comprador',
    turn_says: 'oculta los nombres de otros compradores, el orden de los deseos y lo del agente',
    turn_back: 'Volver al escritorio',
    copy: 'Hacer una copia',
    copy_says: 'para probar otra cosa al lado',
    save: 'Guardar como archivo',
    save_says: 'toda la consulta; también la lee la línea de comandos',
    saved: ({file}: Texts<'file'>) =>
        `Se guardó como ${file}. El ingreso, las deudas y el efectivo de la consulta también ` +
        'están en el archivo. Manténgalo en privado.',
    link: 'Copiar un enlace a la vivienda',
    link_says: 'plano, lote y opciones; sin ingreso, deudas, puntaje de crédito ni efectivo',
    put_away: 'Guardar por ahora',
    put_away_says: 'se quita de la pantalla; el nombre queda en Abrir…',
    close: 'Cerrar este comprador',
    close_says: 'lo borra de este navegador',

    linked: ({where}: Texts<'where'>) =>
        'Se copió un enlace a esta vivienda. Contiene el plano, el lote y las opciones. No ' +
        `contiene nombre, ingreso, deudas, puntaje de crédito ni efectivo. ${where}`,
    link_opens_here: 'Solo abre en esta computadora, mientras quoin esté en marcha.',
    link_opens_at: ({host}: Texts<'host'>) =>
        `Abre en cualquier lugar que pueda llegar a ${host}, mientras quoin esté en marcha allí.`,
    link_damaged: 'El enlace está dañado o incompleto. Cópielo de nuevo, todo entero.',
    link_no_book: ({books}: Texts<'books'>) =>
        'El enlace es de una lista de precios que no está aquí. Listas de precios aquí: ' +
        `${books}.`,
    link_no_home: ({community}: Texts<'community'>) =>
        `Hoy no se puede calcular aquí el precio de ninguna vivienda de ${community}.`,
    link_name: 'Vivienda de un enlace',
    from_link: ({score, closing}: Texts<'score' | 'closing'>) =>
        'Esta vivienda vino en un enlace: su plano, lote y opciones. El ingreso, las deudas, el ' +
        'puntaje de crédito y el efectivo nunca están en un enlace. Se suponen un puntaje de ' +
        `${score} y el cierre el ${closing}: ponga los suyos en Este comprador…`,

    kept: 'Guardados en este navegador',
    kept_line: ({plan, lot, on}: Texts<'plan' | 'lot' | 'on'>) => `${plan}, lote ${lot} · ${on}`,
    open_here: 'abierto ahora',
    find: 'Buscar un comprador por nombre',
    found: ({count}: {count: number}) =>
        count === 0
            ? 'Nadie aquí tiene ese nombre.'
            : count === 1
              ? '1 comprador'
              : `${count} compradores`,
    show_all: ({count}: {count: number}) => `Mostrar los ${count}`,

    new_one: 'Un comprador nuevo',
    new_default: 'Comprador nuevo',
    new_name: 'Nombre: puede ser cualquiera',
    new_plan: 'Plano',
    new_lot: 'Lote',
    new_loan: 'Préstamo para empezar',
    plan: ({name, style, bedrooms, baths}: Texts<'name' | 'style' | 'bedrooms' | 'baths'>) =>
        `${name} · ${style ? `${style}, ` : ''}${bedrooms} ` +
        `${bedrooms === '1' ? 'dormitorio' : 'dormitorios'}, ${baths} ${baths === '1' ? 'baño' : 'baños'}`,
    start: 'Empezar',
    start_bare: 'Omitir estas preguntas',
    open_file: 'Abrir un archivo de consulta…',
    no_books: 'ninguna',
    no_file: ({file}: Texts<'file'>) =>
        `${file} no es un archivo de consulta: no contiene JSON que se pueda leer.`,
    file_no_book: ({file, books}: Texts<'file' | 'books'>) =>
        `${file} es de una lista de precios que no está aquí. Listas de precios aquí: ${books}.`,
    kept_no_book: ({community}: {community: string | null}) =>
        `La lista de precios${community ? ` de ${community}` : ''} no está aquí.`,

    facts,
    facts_changed: 'Comprador y fechas',
    use_facts: 'Usar estos datos',
};
