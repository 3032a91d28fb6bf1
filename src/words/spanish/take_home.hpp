// What is said of a desk that a buyer takes home, in Spanish.
#pragma once

#include "words/take_home.hpp"

namespace quoin::spanish {

inline constexpr TakeHomeWords take_home = {
    .went = "En el archivo:",
    .plan = "plano {}, fachada {}",
    .other_plans = [](int count) -> std::string {
        return count == 1 ? "1 plano más, solo con nombre, tamaño y precio"
                          : fmt::format("{} planos más, solo con nombre, tamaño y precio", count);
    },
    .part = {{{TakenPart::options, "opciones"},
              {TakenPart::incentives, "incentivos"},
              {TakenPart::lots, "lotes"},
              {TakenPart::programs, "programas de préstamos"},
              {TakenPart::rates, "tasas"}}},
    .counted = "{}: {} de {}",
    .pictures = "imágenes: {}, {} kB",
    .all_rates = "hoja de tasas {}: todas las tasas de los programas, plazos y bloqueos de estos "
                 "préstamos",
    .own_rates = "hoja de tasas {}: solo las filas que usan estos préstamos. La hoja no dice que "
                 "se pueda compartir.",
    .of_buyer = {{{Private::score, "puntaje de crédito"},
                  {Private::income, "ingresos y hogar"},
                  {Private::debts, "deudas"},
                  {Private::cash, "efectivo"}}},
    .in_file = "{}, como usted pidió",
    .left_out = "No se incluye:",
    .least_score = "puntaje de crédito: el archivo dice {}, el menor con las mismas cifras",
    .least_of = "puntaje de crédito de \"{}\": el archivo dice {}, el menor con las mismas cifras",
    .down_as_amount = "efectivo: el pago inicial de \"{}\" ahora es el monto que resultó",
    .loan_at_home = "efectivo: \"{}\" no se incluye, porque depende solo del efectivo",
    .wish = "deseo {}: solo lo tienen otros planos",
    .no_picture = "imagen {}: todas juntas pueden tener {} kB",
    .for_the_desk = "las notas para la oficina, los comentarios y quién lo preparó",
    .written = [](std::string_view where, int files, int kb) -> std::string {
        return files == 1
                   ? fmt::format("{}: guardado, {} kB. Solo usted puede leerlo.", where, kb)
                   : fmt::format("{}: guardado, {} archivos, {} kB. Solo usted puede leerlos.",
                                 where, files, kb);
    },
};

} // namespace quoin::spanish
