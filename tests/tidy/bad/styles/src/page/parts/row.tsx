import './row.css';
