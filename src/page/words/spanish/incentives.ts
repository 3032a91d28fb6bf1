// What the builder gives on a home, and what it is used for.
import type {Texts} from '../phrase';

export const incentives = {
    title: 'Incentivos del constructor',
    says:
        'El uso que usted le da a un incentivo cambia todos los préstamos a la vez. Si depende ' +
        'de un prestamista, sus condiciones lo dicen. Usted puede elegir cualquier prestamista.',
    not_used: 'sin usar',
    all_towards: ({use}: Texts<'use'>) => `todo para ${use}`,
    in_parts: 'en partes',
    towards: ({use}: Texts<'use'>) => `para ${use}`,
    towards_of: ({name, use}: Texts<'name' | 'use'>) => `${name} para ${use}`,
    none_used: 'no se usa en esta vivienda',
    given: ({amount, use}: Texts<'amount' | 'use'>) => `${amount} para ${use}`,
    left: ({amount}: Texts<'amount'>) => `No se usan ${amount} de este incentivo.`,
    signed_by: ({on}: Texts<'on'>) => `Firme el contrato a más tardar el ${on}.`,
    closed_by: ({on}: Texts<'on'>) => `Cierre a más tardar el ${on}.`,
    signed_and_closed_by: ({signed, closed}: Texts<'signed' | 'closed'>) =>
        `Firme el contrato a más tardar el ${signed} y cierre a más tardar el ${closed}.`,
};
