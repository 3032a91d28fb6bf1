// Lo que un comprador cambió en casa, de vuelta en la oficina.
import type {Texts} from '../phrase';

export const from_home = {
    title: 'Cambiado en casa',
    as_sent: ({on}: Texts<'on'>) => `Como está aquí, ${on}`,
    as_changed: 'Como lo cambiaron',
    as_of_today: ({on}: Texts<'on'>) => `Lo mismo, al ${on}`,
    added: ({names}: Texts<'names'>) => `Se agregó: ${names}.`,
    gone: ({names}: Texts<'names'>) => `Se quitó: ${names}.`,
    not_sold: ({names}: Texts<'names'>) => `Ya no está disponible: ${names}.`,
    open: 'Abrirlo junto a este comprador',
    opened: 'Se abrió como un comprador aparte. El comprador del que vino no cambió.',
    whose: 'Abra el comprador al que pertenecen estos cambios y luego otra vez el archivo.',
    not_answered: 'Estos cambios no van con la casa de este comprador.',
};
