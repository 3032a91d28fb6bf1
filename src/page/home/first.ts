// What the sheet and the frame around it need before the page is there: no script, a style alone.
import '../tokens.css';
import '../base.css';
import '../parts/bar.css';
import '../views/sheet.css';
import '../parts/app.css';
import '../large_text.css';
import './opening.css';
