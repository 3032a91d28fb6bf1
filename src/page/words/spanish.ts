// Everything that the page says of its own, in Spanish.
import {afford} from './spanish/afford';
import {buyers} from './spanish/buyers';
import {check} from './spanish/check';
import {codes} from './spanish/codes';
import {common} from './spanish/common';
import {figures} from './spanish/figures';
import {frame} from './spanish/frame';
import {from_home} from './spanish/from_home';
import {incentives} from './spanish/incentives';
import {later} from './spanish/later';
import {loan} from './spanish/loan';
import {loan_names} from './spanish/loan_names';
import {loans} from './spanish/loans';
import {money} from './spanish/money';
import {options} from './spanish/options';
import {schedule} from './spanish/schedule';
import {send_home} from './spanish/send_home';
import {sheet} from './spanish/sheet';
import {site} from './spanish/site';
import {terms} from './spanish/terms';
import {tour} from './spanish/tour';
import {way_on} from './spanish/way_on';
import {wishes} from './spanish/wishes';

export const spanish = {
    afford,
    buyers,
    check,
    codes,
    common,
    figures,
    frame,
    from_home,
    incentives,
    later,
    loan,
    loan_names,
    loans,
    money,
    options,
    schedule,
    send_home,
    sheet,
    site,
    terms,
    tour,
    way_on,
    wishes,
};
