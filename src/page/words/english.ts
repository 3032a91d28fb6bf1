// Everything that the page says of its own, in English.
import {afford} from './english/afford';
import {buyers} from './english/buyers';
import {check} from './english/check';
import {codes} from './english/codes';
import {common} from './english/common';
import {figures} from './english/figures';
import {frame} from './english/frame';
import {from_home} from './english/from_home';
import {incentives} from './english/incentives';
import {later} from './english/later';
import {loan} from './english/loan';
import {loan_names} from './english/loan_names';
import {loans} from './english/loans';
import {money} from './english/money';
import {options} from './english/options';
import {schedule} from './english/schedule';
import {send_home} from './english/send_home';
import {sheet} from './english/sheet';
import {site} from './english/site';
import {terms} from './english/terms';
import {tour} from './english/tour';
import {way_on} from './english/way_on';
import {wishes} from './english/wishes';

export const english = {
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
