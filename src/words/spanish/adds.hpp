// What each option adds, and what comes with an option, in Spanish.
#pragma once

#include "words/adds.hpp"

namespace quoin::spanish {

inline constexpr AddsWords adds = {
    .title = "Lo que agrega cada opción",
    .contract_price = "Precio del contrato ahora: {}",
    .loans = "Los préstamos",
    .scenario = "{}: {} al mes. {}. Regla general: cada $1,000 de préstamo cuestan {} al mes.",
    .price = "precio",
    .alone =
        "Agregar una opción a su vivienda tal como está: cambio en el precio y en el pago mensual",
    .taking_out = "Quitar una opción que usted eligió: cambio en el precio y en el pago mensual",
    .held = "Ya vienen en un paquete que usted eligió",
    .barred = "No disponibles",
    .stacked =
        "Sus opciones una tras otra, desde una vivienda sin opciones: cambio en precio y pago "
        "mensual",
    .together = "todo junto",
    .jumps = "Por qué algunas cifras dan un salto",
    .named = "{}: {}",
    .in_package = "{}, en {}",
    .why_barred = "{}: {}",
    .added = "{} ({}), si se agrega: {}",
    .in_home = "{} ({}), ya está en su vivienda: agrega {}",
    .counted_with = "incluye {}, que no se puede tener sin ella",
    .wish = "deseo {}",
    .with = "también agrega {}",
    .and_with = "también quita {}",
    .instead_of = "en lugar de {}",
    .before = "decidir antes de: {}",
    .after_closing = "O hágalo más adelante, después del cierre: unos {}. {}",
    .jump = "{}: {}",
    .a_month = "al mes",
    .to_close = "efectivo para el cierre",
    .over_five_years = "en cinco años",
    .over_loan = "en todo el préstamo",
    .alone_and_stacked =
        "Cada cifra es una cotización completa menos otra, y cada cotización se redondea antes. "
        "Por eso una opción sola y la misma opción después de otras pueden diferir en centavos. "
        "La diferencia puede ser mayor donde una regla del préstamo cambia a partir de cierto "
        "monto.",
};

} // namespace quoin::spanish
