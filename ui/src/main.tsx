import { render } from 'preact';
import { App } from './views/App';
import 'uplot/dist/uPlot.min.css';
import './style/base.css';
import './style/shop.css';
import './style/build.css';
import './style/proof.css';
import './style/prediction.css';
import './style/schedule.css';
import './style/print.css';

const page = document.getElementById('page');
if (page) {
  render(<App />, page);
}
