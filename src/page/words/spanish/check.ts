// Where each figure comes from, for the lender.
import {rich} from '../phrase';
import type {Parts, Texts} from '../phrase';

export const check = {
    title: 'De dónde viene cada cifra',
    says: ({loan, terms, estimate}: Parts<'loan' | 'terms' | 'estimate'>) =>
        rich`Para el prestamista. Las fórmulas y las fuentes están en inglés. ${loan}: ${terms}. ${estimate}`,
    no_recheck:
        'Este programa aún no puede responder a la pregunta "recheck". Mientras tanto, la línea ' +
        'de comandos muestra las partes de cada cifra: quoin quote, quoin cash y quoin schedule.',
    reckoning: 'Calculando cada cifra por segunda vez…',
    figures: ({figures, differences}: {figures: number; differences: number}) =>
        `${figures} cifras, cada una calculada por segunda vez con su fórmula en fracciones ` +
        'exactas: ' +
        (differences === 0
            ? 'todas coinciden hasta el último dígito.'
            : `no coinciden ${differences}.`),

    workbook: 'Libro para una hoja de cálculo',
    saved: ({file}: Texts<'file'>) =>
        `Se guardó como ${file}. Vuelve a calcular cada cifra con su fórmula.`,
    find: 'Busque una cifra, una regla o una fuente',
    nothing_found: 'Nada aquí coincide con eso.',

    in_section: ({count}: {count: number}) => `${count} cifras`,
    agrees: 'coincide',
    does_not_agree: 'no coincide',
    inputs_of: ({figure}: Texts<'figure'>) => `De qué se calcula: ${figure}`,
    rounding: ({rounding}: {rounding: number}) => `redondeo ${rounding}`,
    from: ({on}: Texts<'on'>) => `desde el ${on}`,
    until: ({on, beyond}: Texts<'on'> & {beyond: boolean}) =>
        `antes del ${on}${beyond ? ', y aún en uso: los datos no tienen otra posterior' : ''}`,
};
