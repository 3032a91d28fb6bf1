// Why a figure jumps, in Spanish.
#pragma once

#include "words/jumps.hpp"

namespace quoin::spanish {

inline constexpr JumpWords jumps = {
    .ltv_moved = "la LTV pasa de {}% a {}%: {}",
    .none = "ninguno",
    .percent = "{}%",
    .percent_a_year = "{}% al año",
    .note_rate = "la tasa de interés pasa de {} a {}{}",
    .points = "los puntos pasan de {} a {}{}",
    .upfront_fee = "el cargo inicial pasa de {} a {}{}",
    .annual_premium = "el seguro hipotecario anual pasa de {} a {}{}",
    .annual_premium_months = "los meses con seguro hipotecario anual pasan de {} a {}{}",
    .single_premium = "la prima única del seguro hipotecario pasa de {} a {}{}",
    .contribution_cap = "el límite a las contribuciones del vendedor y otras partes interesadas "
                        "pasa de {} a {}{}",
    .homeowner = "el seguro de vivienda pasa de {} a {} al año por cada $1,000 de valor "
                 "asegurado de la vivienda{}",
    .insurance_changes = "el seguro hipotecario pasa de {} a {}{}",
    .insurance_starts = "el seguro hipotecario empieza con {}{}",
    .insurance_ends = "el seguro hipotecario ya no se necesita; era de {}",
    .row = " ({})",
    .ltv = "LTV",
    .down_payment = "pago inicial",
    .term = "plazo",
    .base_loan = "monto base del préstamo",
    .loan = "monto del préstamo",
    .score = "puntaje de crédito",
    .price = "precio",
    .dwelling_value = "valor asegurado de la vivienda",
    .over = "más de {}",
    .from = "al menos {}",
    .under = "menos de {}",
    .up_to = "hasta {}",
    .both_edges = "{} y {}",
    .band = "{}: {}",
    .band_months = "{} meses",
};

} // namespace quoin::spanish
